import { execFileSync } from 'node:child_process'

/** The commit that is checked out, for what a run says of itself; null outside a repository. */
export function commitOf(): string | null {
  try {
    return execFileSync('git', ['rev-parse', 'HEAD'], { encoding: 'utf8' }).trim()
  } catch {
    return null
  }
}
