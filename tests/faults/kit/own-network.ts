import { execFileSync, spawnSync } from 'node:child_process'
import type { Ends } from './ends.ts'

/** A network of the machine's own, in which packets of one path are lost with no word to anybody. */
export interface OwnNetwork {
  /** Put before a command, to run it on the far side. */
  readonly before: readonly string[]
  /** The far side by the path that is always well. */
  readonly direct: string
  /** The far side by the path that can be silent. */
  readonly troubled: string
  readonly silence: (ways: readonly ('up' | 'down')[]) => void
  readonly clear: () => void
}

const ip = (...words: readonly string[]): void =>
  void execFileSync('ip', words, { stdio: ['ignore', 'ignore', 'pipe'] })

/** Null where it is permitted, else why not, in words. */
export function ownNetworkFault(): string | null {
  const name = `st-probe-${process.pid}`
  const { status, error, stderr } = spawnSync('ip', ['netns', 'add', name])
  if (status !== 0) return error?.message ?? String(stderr).trim()
  spawnSync('ip', ['netns', 'del', name])
  return null
}

/** Nobody's: what is sent to it arrives nowhere, and no error comes back. */
const nobody = '02:00:00:00:00:99'

/** So many of four addresses fit in the network that a process takes for itself. */
const mostPaths = 63
let paths = 0

/** A namespace with two paths to it, each a pair of devices in a network of four addresses that is no route's. */
export function makeOwnNetwork(ends: Ends): OwnNetwork {
  // A kernel takes a network down a while after its end: no name and no address comes twice.
  const name = `st-${process.pid}-${paths}`
  ip('netns', 'add', name)
  ends.add(() => ip('netns', 'del', name))
  const before = ['ip', 'netns', 'exec', name]
  const within = (...words: readonly string[]): void => ip('-n', name, ...words)
  const path = () => {
    const place = paths++ % mostPaths
    const [near, far] = [`st${process.pid % 100_000}a${place}`, `st${process.pid % 100_000}b${place}`]
    const at = (host: number): string => `10.203.${process.pid % 250}.${place * 4 + host}`
    ip('link', 'add', near, 'type', 'veth', 'peer', 'name', far, 'netns', name)
    ip('addr', 'add', `${at(1)}/30`, 'dev', near)
    ip('link', 'set', near, 'up')
    within('addr', 'add', `${at(2)}/30`, 'dev', far)
    within('link', 'set', far, 'up')
    return { near, far, nearAt: at(1), farAt: at(2) }
  }
  const [direct, troubled] = [path(), path()]
  const sides = {
    up: { run: ip, to: ['to', troubled.farAt, 'dev', troubled.near] },
    down: { run: within, to: ['to', troubled.nearAt, 'dev', troubled.far] },
  } as const
  const silent = new Set<'up' | 'down'>()
  return {
    before,
    direct: direct.farAt,
    troubled: troubled.farAt,
    silence(ways) {
      for (const way of ways) {
        const { run, to } = sides[way]
        run('neigh', 'replace', ...to, 'lladdr', nobody, 'nud', 'permanent')
        silent.add(way)
      }
    },
    clear() {
      for (const way of silent) sides[way].run('neigh', 'del', ...sides[way].to)
      silent.clear()
    },
  }
}
