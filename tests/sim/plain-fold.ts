/*
 * What a set of ops says, by its definition and nothing else: a fact stands unless some op of the set names its op in
 * the `replaces` of a fact under the same key. It shares no line with core/log.
 */

interface PlainOp {
  readonly device: string
  readonly n: number
  readonly facts: readonly { readonly key: string; readonly value: unknown; readonly replaces: readonly string[] }[]
}

/** "key op" for every fact that stands, sorted. */
export function plainFold(texts: Iterable<string>): string[] {
  const ops = new Map<string, PlainOp>()
  for (const text of texts) {
    const op = JSON.parse(text) as PlainOp
    ops.set(`${op.device}.${op.n}`, op)
  }
  const replaced = new Set<string>()
  for (const { facts } of ops.values()) {
    for (const { key, replaces } of facts) for (const id of replaces) replaced.add(`${key} ${id}`)
  }
  const standing: string[] = []
  for (const [id, { facts }] of ops) {
    for (const { key, value } of facts) {
      const name = `${key} ${id}`
      if (value !== null && !replaced.has(name)) standing.push(name)
    }
  }
  return standing.sort()
}
