import { spawnSync } from 'node:child_process'
import { rmSync, utimesSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { makeProduct, type Product } from './make-product.ts'

let product: Product
beforeEach(() => {
  product = makeProduct()
})
afterEach(() => product.remove())

const setup = ['scripts/setup.mjs', 'deps']
const waiting = 'Waiting for another set-up in this folder to finish …\n'
const installing = 'Installing packages …\n'

test('of set-ups started at once one works and the others wait for it', async () => {
  // It works on until both others have said that they wait.
  product.write('npm-hold', '')
  const started = [setup, setup, setup].map(each => product.start(each))
  const heard: string[] = []
  await new Promise<void>(resolve => {
    for (const { child } of started) {
      child.stderr?.on('data', said => {
        heard.push(String(said))
        if (heard.filter(line => line === waiting).length === 2) resolve()
      })
    }
  })
  rmSync(join(product.folder, 'npm-hold'))
  const runs = await Promise.all(started.map(({ done }) => done))
  expect(runs.map(run => run.status)).toEqual([0, 0, 0])
  expect(runs.map(run => run.stderr).sort()).toEqual([installing, waiting, waiting])
  expect(product.read('npm-calls').trim().split('\n')).toHaveLength(1)
  expect(product.has('.cache/setup.lock')).toBe(false)
})

test('a set-up waits for a living holder until the lock is given back', async () => {
  const holder = `.cache/setup.lock/${process.pid}`
  product.write(holder, '')
  const { child, done } = product.start(setup)
  await new Promise(resolve => child.stderr?.once('data', resolve))
  expect(product.has('npm-calls')).toBe(false)
  rmSync(join(product.folder, holder))
  expect(await done).toEqual({ status: 0, stdout: '', stderr: waiting + installing })
})

test('a holder that is dead is taken off', async () => {
  const dead = spawnSync(process.execPath, ['-e', '']).pid
  product.write(`.cache/setup.lock/${dead}`, '')
  expect(await product.run(setup)).toEqual({ status: 0, stdout: '', stderr: installing })
  expect(product.has('.cache/setup.lock')).toBe(false)
})

test('a number that now names another process does not keep the lock', async () => {
  const holder = `.cache/setup.lock/${process.pid}`
  product.write(holder, '')
  const longAgo = new Date(Date.now() - 120_000)
  utimesSync(join(product.folder, holder), longAgo, longAgo)
  expect(await product.run(setup)).toEqual({ status: 0, stdout: '', stderr: installing })
})

test('SIGTERM stops the install and gives the lock back', async () => {
  product.putProgram('npm', 'setInterval(() => {}, 1000)')
  const { child, done } = product.start(setup)
  await new Promise(resolve => child.stderr?.once('data', resolve))
  child.kill('SIGTERM')
  expect((await done).status).toBe(1)
  expect(product.has('.cache/setup.lock')).toBe(false)
})
