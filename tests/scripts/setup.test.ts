import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { makeProduct, type Product } from './make-product.ts'

let product: Product
beforeEach(() => {
  product = makeProduct()
})
afterEach(() => product.remove())

const setup = 'scripts/setup.mjs'
const callsOf = (name: string): number => (product.has(name) ? product.read(name).trim().split('\n').length : 0)

describe('the Node version', () => {
  const as = (version: string): string => `data:text/javascript,
    Object.defineProperty(process, 'versions', { value: { ...process.versions, node: '${version}' } })`

  test.each(['18.20.4', '20.18.3'])('%s ends with one line and nothing done', async version => {
    for (const script of [setup, 'scripts/test.mjs', 'scripts/run.mjs', 'scripts/dev.mjs']) {
      const { status, stdout, stderr } = await product.run(['--import', as(version), script])
      expect({ status, stdout, stderr }).toEqual({
        status: 1,
        stdout: '',
        stderr: `Six Threes needs Node 20.19 or newer; this is ${version}.\n`,
      })
    }
    expect(callsOf('npm-calls')).toBe(0)
  })

  test('20.19 and newer goes on', async () => {
    for (const version of ['20.19.0', '22.1.0']) {
      expect((await product.run(['--import', as(version), setup, 'deps'])).status).toBe(0)
    }
  })
})

describe('the packages', () => {
  test('are installed once, tools included, with nothing on standard output', async () => {
    const first = await product.run([setup, 'deps'], { NODE_ENV: 'production' })
    expect(first).toEqual({ status: 0, stdout: '', stderr: 'Installing packages …\n' })
    expect(product.read('npm-calls')).toMatch(/^ci --include=dev /)
    const second = await product.run([setup, 'deps'])
    expect(second).toEqual({ status: 0, stdout: '', stderr: '' })
    expect(callsOf('npm-calls')).toBe(1)
  })

  test('are installed again when the lock file asks for another version, or a package is gone', async () => {
    await product.run([setup, 'deps'])
    product.write('package-lock.json', product.read('package-lock.json').replace('1.0.0', '1.0.1'))
    await product.run([setup, 'deps'])
    expect(callsOf('npm-calls')).toBe(2)
    await product.run(['-e', 'fs.rmSync("node_modules/vite", { recursive: true })'])
    await product.run([setup, 'deps'])
    expect(callsOf('npm-calls')).toBe(3)
  })

  test('with no network: one line more, status 1, and the next start may try again', async () => {
    product.putProgram('npm', 'console.error("npm error code EAI_AGAIN\\nnpm error more"); process.exit(1)')
    const { status, stderr } = await product.run([setup, 'deps', 'build'])
    expect(status).toBe(1)
    expect(stderr.split('\n').slice(0, -1)).toEqual([
      'Installing packages …',
      'No network: the packages could not be fetched. Connect and start again (details: .cache/npm-ci.log).',
    ])
    expect(product.read('.cache/npm-ci.log')).toContain('npm error more')
    expect(product.has('.cache/setup.lock')).toBe(false)
  })

  test('a missing native module is told in one line', async () => {
    await product.run([setup, 'deps'])
    product.write('node_modules/@photostructure/sqlite/main.js', 'throw new Error("No native build was found\\nat x")')
    product.write(
      'hide-built-in.mjs',
      `const node = '20.20.2'
      Object.defineProperty(process, 'versions', { value: { ...process.versions, node } })`,
    )
    const { status, stderr } = await product.run(['--import', './hide-built-in.mjs', setup, 'deps', 'build'])
    expect(status).toBe(1)
    expect(stderr).toMatch(/^The SQLite module for this machine is missing\. .*\(No native build was found\)\.\n$/)
  })
})

describe('the build', () => {
  test('is made once, for production, and again when a source changes', async () => {
    await product.run([setup, 'deps', 'build'])
    const firstId = product.read('dist/server/main.js')
    expect(await product.run([setup, 'deps', 'build'])).toEqual({ status: 0, stdout: '', stderr: '' })
    expect(product.read('vite-calls')).toBe(
      'build --config client/vite.config.ts production\nbuild --config server/vite.config.ts production\n',
    )
    product.write('core/hole.ts', 'export const par = 5\n')
    await product.run([setup, 'deps', 'build'])
    expect(callsOf('vite-calls')).toBe(4)
    expect(product.read('dist/server/main.js')).not.toBe(firstId)
  })

  test('that fails says why in one line and is tried again', async () => {
    await product.run([setup, 'deps'])
    const vite = 'node_modules/vite/bin/vite.js'
    const working = product.read(vite)
    product.write(vite, 'console.error("error during build:\\nhole.ts: Unexpected token"); process.exit(1)')
    const { status, stderr } = await product.run([setup, 'build'])
    expect(status).toBe(1)
    expect(stderr).toContain(
      'The client could not be built: hole.ts: Unexpected token (details: .cache/build-client.log).',
    )
    product.write(vite, working)
    expect((await product.run([setup, 'build'])).status).toBe(0)
  })
})

describe('the browser', () => {
  const chromium = '#!/bin/sh\n'

  test('that CHROMIUM_PATH names is used, and a wrong path is told in one line', async () => {
    product.putProgram('my-browser', chromium)
    const right = { CHROMIUM_PATH: `${product.folder}/bin/my-browser` }
    expect(await product.run([setup, 'chromium'], right)).toEqual({ status: 0, stdout: '', stderr: '' })
    const { status, stderr } = await product.run([setup, 'chromium'], { CHROMIUM_PATH: '/nowhere/browser' })
    expect(status).toBe(1)
    expect(stderr).toMatch(/^CHROMIUM_PATH names \/nowhere\/browser, .*npm test -- types lint unit\.\n$/)
  })

  const asUser = (id: number): string => `data:text/javascript,process.getuid = () => ${id}`

  test('is installed from the system by root, after the package lists where they are missing', async () => {
    product.putProgram(
      'apt-get',
      `import { appendFileSync, existsSync, writeFileSync } from 'node:fs'
      const args = process.argv.slice(2).join(' ')
      appendFileSync('apt-calls', args + '\\n')
      if (args.endsWith('update')) writeFileSync('lists', '')
      else if (existsSync('lists')) writeFileSync('bin/chromium', '', { mode: 0o755 })
      else process.exit(100)`,
    )
    expect((await product.run(['--import', asUser(0), setup, 'chromium'])).status).toBe(0)
    const wait = '-o DPkg::Lock::Timeout=300'
    const install = `${wait} install -y --no-install-recommends chromium`
    expect(product.read('apt-calls')).toBe(`${install}\n${wait} update\n${install}\n`)
    expect((await product.run(['--import', asUser(0), setup, 'chromium'])).stderr).toBe('')
    expect(callsOf('apt-calls')).toBe(3)
  })

  test('that cannot be installed is told in one line with the way out', async () => {
    const line = /^No Chromium for the browser tests: install it .* or set CHROMIUM_PATH; .*\n$/
    const other = await product.run(['--import', asUser(1000), setup, 'chromium'])
    expect(other.status).toBe(1)
    expect(other.stderr).toMatch(line)
    const noApt = await product.run(['--import', asUser(0), setup, 'chromium'])
    expect(noApt.status).toBe(1)
    expect(noApt.stderr.replace('Installing Chromium for the browser tests …\n', '')).toMatch(line)
  })
})

describe('a command', () => {
  test('has standard output for itself, gets its arguments and keeps its status', async () => {
    product.write(
      'scripts/settle.ts',
      'console.log(JSON.stringify(process.argv.slice(2) as string[])); process.exit(2)',
    )
    const { status, stdout, stderr } = await product.run(['scripts/run.mjs', 'settle', 'a file.json', '--x'])
    expect({ status, stdout, stderr }).toEqual({
      status: 2,
      stdout: '["a file.json","--x"]\n',
      stderr: 'Installing packages …\n',
    })
  })

  test('that does not exist is refused', async () => {
    const { status, stdout, stderr } = await product.run(['scripts/run.mjs', 'toString'])
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' })
    expect(stderr).toMatch(/^Unknown command "toString"; there are .*\n$/)
  })
})
