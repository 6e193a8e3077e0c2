import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { root } from './source-files.ts'

interface Lock {
  readonly packages: Readonly<Record<string, { readonly version?: string }>>
}
const lock: Lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'))

/** Every copy of the package that would be installed, the nested ones too. */
const versionsOf = (name: string): string[] =>
  Object.entries(lock.packages)
    .filter(([path]) => path === `node_modules/${name}` || path.endsWith(`/node_modules/${name}`))
    .map(([, { version = '' }]) => version)

const partsOf = (version: string): number[] => version.split('.').map(part => Number.parseInt(part, 10))

function isAtLeast(version: string, least: string): boolean {
  const [have, need] = [partsOf(version), partsOf(least)]
  const place = need.findIndex((part, index) => part !== have[index])
  return place === -1 || (have[place] ?? 0) > (need[place] ?? 0)
}

/** Source: the packages' own notes on safety, and the records of the faults, as of November 2026. */
const least = [
  ['socket.io', '4.8.3', 'CVE-2024-38355: an error nobody listens to ends the process'],
  ['socket.io-client', '4.8.3', 'in step with the server'],
  ['engine.io', '6.6.9', 'CVE-2023-31125 and before it: a request ends the process'],
  ['socket.io-parser', '4.2.6', 'CVE-2026-33151: attachments without bound'],
  ['ws', '8.21.1', 'CVE-2026-62389, CVE-2026-48779'],
  ['zustand', '5.0.15', 'pull request 3336: two readings of the storage at once'],
] as const

describe('what is installed', () => {
  it.each(least)('%s is at least %s (%s)', (name, version) => {
    const found = versionsOf(name)
    expect(found).not.toEqual([])
    expect(found.filter(one => !isAtLeast(one, version))).toEqual([])
  })

  it('is compared part by part', () => {
    expect(['4.8.3', '4.10.0', '5.0.0'].every(version => isAtLeast(version, '4.8.3'))).toBe(true)
    expect(['4.8.2', '4.7.9', '3.9.9'].some(version => isAtLeast(version, '4.8.3'))).toBe(false)
  })
})
