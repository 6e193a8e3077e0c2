import { logFeed, logPath, readerHeaders } from './phone.ts'

/** Sequence and text of an act, as the server has it. */
export type Row = readonly [number, string, ...unknown[]]

interface Part {
  readonly ops: readonly Row[]
  readonly upTo: number
  readonly more: boolean
}

/** The whole log as the server gives it to somebody who holds nothing: the one group has all, and has it at once. */
export async function readLog(url: string): Promise<readonly Row[]> {
  const rows: Row[] = []
  for (let after = 0, more = true; more; ) {
    const answer = await fetch(`${url}${logPath}?feed=${encodeURIComponent(logFeed)}&after=${after}`, {
      headers: readerHeaders,
    })
    const { part, ...other } = (await answer.json()) as { readonly part?: Part }
    if (!part) throw new Error(`the log could not be read: ${JSON.stringify(other)}`)
    rows.push(...part.ops)
    after = part.upTo
    more = part.more
  }
  return rows
}
