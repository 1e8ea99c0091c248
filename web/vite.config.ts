import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

/** Vendors in chunks of their own stay cached when the client changes; everything else is split by route. */
const vendors = [
  { name: "react", test: /node_modules\/(react|react-dom|scheduler)\// },
  {
    name: "apollo",
    test: /node_modules\/(@apollo|graphql|@graphql-typed-document-node|rxjs|@wry|optimism|tslib)\//,
  },
  { name: "cytoscape", test: /node_modules\/cytoscape\// },
];

export default defineConfig({
  root: import.meta.dirname,
  plugins: [react()],
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
