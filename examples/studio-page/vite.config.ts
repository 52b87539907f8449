import { defineConfig } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { meshFiles } from "./mesh-files.js";

export default defineConfig({
  // The page runs from any folder of any server.
  base: "./",
  build: { target: "es2022" },
  plugins: [
    meshFiles(),
    VitePWA({
      registerType: "autoUpdate",
      injectRegister: "script-defer",
      manifest: {
        name: "Brow map",
        short_name: "Brow map",
        description: "Maps brows on a photo or by ruler. Nothing leaves this device.",
        display: "standalone",
        start_url: "./",
        background_color: "#faf8f5",
        theme_color: "#24407f",
        icons: [{ src: "icon.svg", sizes: "any", type: "image/svg+xml", purpose: "any" }],
      },
      workbox: {
        // All of it, the face finder too: the page has no network after loading.
        globPatterns: ["**/*.{html,js,css,svg,json,wasm,data,binarypb}"],
        maximumFileSizeToCacheInBytes: 8_000_000,
      },
    }),
  ],
});
