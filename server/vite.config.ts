import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vite'

/** The server in one file; its packages stay in node_modules. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  define: { __BUILD__: JSON.stringify(process.env.BUILD_ID ?? 'dev') },
  publicDir: false,
  logLevel: 'warn',
  build: { ssr: 'server/main.ts', outDir: 'dist/server', target: 'node20', sourcemap: true, emptyOutDir: true },
})
