import { readdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import react from '@vitejs/plugin-react'
import { build, defineConfig, type Plugin } from 'vite'

const buildId = process.env.BUILD_ID ?? 'dev'
const workerSource = fileURLToPath(new URL('worker.ts', import.meta.url))
const serverUrl = `http://localhost:${process.env.PORT || '8686'}`

/** URL paths of everything that the page needs with no signal, in a fixed order. */
function listFiles(outDir: string): string[] {
  return readdirSync(outDir, { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile() && !entry.name.endsWith('.map') && entry.name !== 'worker.js')
    .map(entry => `${entry.parentPath.slice(outDir.length)}/${entry.name}`)
    .sort()
}

/** Builds the service worker when the page's files are written, since it carries their names and the build's id. */
function serviceWorker(): Plugin {
  let outDir = ''
  return {
    name: 'service-worker',
    apply: 'build',
    configResolved: config => {
      outDir = config.build.outDir
    },
    async closeBundle() {
      await build({
        configFile: false,
        publicDir: false,
        logLevel: 'warn',
        define: { __BUILD__: JSON.stringify(buildId), __FILES__: JSON.stringify(listFiles(outDir)) },
        build: {
          outDir,
          emptyOutDir: false,
          lib: { entry: workerSource, formats: ['iife'], name: 'worker', fileName: () => 'worker.js' },
        },
      })
    },
  }
}

/** What the page's script imports is asked for beside it, not once it has come. */
function askedBeside(): Plugin {
  return {
    name: 'asked-beside',
    apply: 'build',
    transformIndexHtml: (_, { chunk }) =>
      (chunk?.imports ?? []).map(file => ({ tag: 'link', attrs: { rel: 'modulepreload', href: `/${file}` } })),
  }
}

export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  plugins: [react(), askedBeside(), serviceWorker()],
  define: { __BUILD__: JSON.stringify(buildId) },
  logLevel: 'warn',
  build: {
    outDir: fileURLToPath(new URL('../dist/client', import.meta.url)),
    emptyOutDir: true,
    sourcemap: true,
    assetsInlineLimit: 0,
    // Every file is on the phone before it is asked for; the list of who needs whom would be in the entry.
    modulePreload: false,
    chunkSizeWarningLimit: 600,
    // One file with all that scoring a hole needs: it packs better than many, and is there in one piece.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'hole', tags: ['$initial'] }] } } },
  },
  server: {
    proxy: {
      '/socket.io': { target: serverUrl, ws: true },
      '/api': serverUrl,
      '/healthz': serverUrl,
    },
  },
})
