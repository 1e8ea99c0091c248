import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { CHUNK_GROUPS } from "./build/chunk-groups.ts";
import { compressed } from "./build/compressed.ts";
import { filesAhead } from "./build/files-ahead.ts";
import { operationNames } from "./build/operation-names.ts";

export default defineConfig({
  root: import.meta.dirname,
  plugins: [react(), compressed, filesAhead, operationNames],
  build: {
    outDir: "dist",
    emptyOutDir: true,
    target: "es2023",
    // Nothing as a data: address, so that the page runs under `default-src 'self'`.
    assetsInlineLimit: 0,
    // One file of 14 KB, compressed, that every page has from then on; in pieces they were up to ten a page.
    cssCodeSplit: false,
    manifest: true,
    rolldownOptions: {
      output: { codeSplitting: { groups: CHUNK_GROUPS } },
      checks: { pluginTimings: false },
    },
  },
  server: {
    host: "127.0.0.1",
    // The server compares Host and Origin: both stay those of the page.
    proxy: {
      "/graphql": {
        target: process.env["SCRIBELINE_URL"] ?? "http://127.0.0.1:4820",
        changeOrigin: false,
        ws: true,
      },
      "/account/": {
        target: process.env["SCRIBELINE_URL"] ?? "http://127.0.0.1:4820",
        changeOrigin: false,
      },
    },
  },
});
