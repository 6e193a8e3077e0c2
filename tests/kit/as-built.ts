import { basename } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { build } from 'vite'

const path = (relative: string): string => fileURLToPath(new URL(relative, import.meta.url))

/**
 * The module in one file, built as the server is built. What measures core, or runs it for hours, loads it so: the loader
 * that runs TypeScript as it stands gives every function its name anew each time that one is made, which no golfer's
 * phone and no server does.
 * @param file in tests, such as `bench/standings-run.ts`
 */
export async function importAsBuilt<Module>(file: string): Promise<Module> {
  const outDir = path('../../.cache/as-built')
  await build({
    configFile: path('../../server/vite.config.ts'),
    build: { ssr: path(`../${file}`), outDir, emptyOutDir: false },
  })
  return import(pathToFileURL(`${outDir}/${basename(file, '.ts')}.js`).href)
}
