import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import react from "@vitejs/plugin-react";
import { defineConfig, type Plugin } from "vite";

/** Vendors in chunks of their own stay cached when the client changes; everything else is split by route. */
const vendors = [
  { name: "react", test: /node_modules\/(react|react-dom|scheduler)\// },
  {
    name: "apollo",
    test: /node_modules\/(@apollo|graphql|@graphql-typed-document-node|rxjs|@wry|optimism|tslib)\//,
  },
  { name: "cytoscape", test: /node_modules\/cytoscape\// },
];

/** Puts the same after gzip beside each built text file, so that the server has nothing to compress while it answers. */
const compressed: Plugin = {
  name: "scribeline:compressed",
  apply: "build",
  writeBundle({ dir = "" }, bundle) {
    for (const [name, file] of Object.entries(bundle))
      if (/\.(js|css|html)$/.test(name))
        writeFileSync(
          join(dir, `${name}.gz`),
          gzipSync(file.type === "chunk" ? file.code : file.source, { level: 9 }),
        );
  },
};

export default defineConfig({
  root: import.meta.dirname,
  plugins: [react(), compressed],
  build: {
    outDir: "dist",
    emptyOutDir: true,
    target: "es2023",
    // Nothing as a data: address, so that the page runs under `default-src 'self'`.
    assetsInlineLimit: 0,
    manifest: true,
    rolldownOptions: { output: { codeSplitting: { groups: vendors } } },
  },
  server: {
    host: "127.0.0.1",
    // The server compares Host and Origin: both stay those of the page.
    proxy: {
      "/graphql": {
        target: process.env["SCRIBELINE_URL"] ?? "http://127.0.0.1:4820",
        changeOrigin: false,
      },
    },
  },
});
