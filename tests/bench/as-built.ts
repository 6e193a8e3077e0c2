import { fileURLToPath, pathToFileURL } from 'node:url'
import { build } from 'vite'

const path = (relative: string): string => fileURLToPath(new URL(relative, import.meta.url))

/**
 * The module in one file, built as the server is built. What measures core loads it so: the loader that runs TypeScript
 * as it stands gives every function its name anew each time that one is made, which no golfer's phone and no server does.
 * @param name of a file beside this one, without its ending
 */
export async function importAsBuilt<Module>(name: string): Promise<Module> {
  const outDir = path('../../.cache/bench')
  await build({
    configFile: path('../../server/vite.config.ts'),
    build: { ssr: path(`${name}.ts`), outDir, emptyOutDir: false },
  })
  return import(pathToFileURL(`${outDir}/${name}.js`).href)
}
