import { fileURLToPath } from 'node:url'
import react from '@vitejs/plugin-react'
import { build, type Rollup } from 'vite'

/**
 * What a file of `in-page` says, as one script for the page, built for use as the page itself is.
 * @param name of the file, with its ending
 */
export async function scriptInPage(name: string): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    plugins: [react()],
    build: {
      write: false,
      modulePreload: false,
      rolldownOptions: {
        input: fileURLToPath(new URL(`in-page/${name}`, import.meta.url)),
        output: { format: 'iife' },
      },
    },
  })
  const files = [built].flat().flatMap(each => ('output' in each ? each.output : []))
  const [script] = files.filter((file): file is Rollup.OutputChunk => file.type === 'chunk')
  if (!script) throw new Error(`${name} is no script`)
  return script.code
}
