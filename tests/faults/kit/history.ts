import type { Engine } from '#client/sync/engine.ts'
import type { Row } from './server-log.ts'

/** What a fault must not do, counted, with words for whoever looks for the cause. */
export interface Counts {
  /** Acts that the server said it had stored and does not have. */
  lost: number
  /** Acts that stand twice, or out of the order in which their phone said them. */
  duplicated: number
  /** A phone says of an act that the server has it, or that its link is live, and it is not so. */
  falseMarks: number
  words: string[]
}

/** Texts of acts that the server has, as it said itself and as each phone says. */
interface Said {
  readonly stored: readonly string[]
  readonly phones: ReadonlyMap<string, readonly string[]>
}

/**
 * What is known of a run apart from the product: which acts the server has said it stored. It reads the answers on the
 * wire and the server's log, and shares no code with the phones.
 */
export interface History {
  readonly counts: Counts
  readonly acknowledged: () => number
  /** Of the verdicts that put acts off, how many gave this reason. */
  readonly putOff: (reason: string) => number
  readonly watch: (name: string, engine: Engine) => void
  readonly answered: (sent: readonly string[], answer: unknown) => void
  /** What the server and the phones have said until now, to be held against a log that is read after it. */
  readonly whatIsSaid: () => Said
  readonly compare: (rows: readonly Row[], said: Said) => void
  /** When all is well again: every act of every phone is there, and all phones hold the same. */
  readonly compareEnd: (rows: readonly Row[]) => void
  readonly fail: (kind: 'lost' | 'duplicated' | 'falseMarks' | 'other', words: string) => void
}

const idOf = (text: string): string => {
  const { device, n } = JSON.parse(text) as { device: string; n: number }
  return `${device}.${n}`
}

export function createHistory(): History {
  const counts: Counts = { lost: 0, duplicated: 0, falseMarks: 0, words: [] }
  const stored = new Map<string, string>()
  const delays = new Map<string, number>()
  const engines = new Map<string, Engine>()

  const fail: History['fail'] = (kind, words) => {
    if (kind !== 'other') counts[kind]++
    if (counts.words.length < 12) counts.words.push(`${kind}: ${words}`)
  }

  const answered: History['answered'] = (sent, answer) => {
    const { verdicts = [] } = answer as { readonly verdicts?: readonly { kind: string; reason?: string }[] }
    for (const [index, { kind, reason }] of verdicts.entries()) {
      const text = sent[index]
      if (text === undefined) continue
      if (kind === 'stored' || kind === 'already stored') stored.set(idOf(text), text)
      if (kind === 'later' && reason) delays.set(reason, (delays.get(reason) ?? 0) + 1)
      if (kind === 'refused') fail('other', `${idOf(text)} was refused: ${JSON.stringify(verdicts[index])}`)
    }
  }

  const textsOf = (engine: Engine, isOnServer: boolean): string[] =>
    [...engine.holding().ops.values()].filter(({ mark }) => !isOnServer || mark.kind === 'none').map(({ text }) => text)

  /** Once each, and those of a phone in its order. */
  const checkRows = (rows: readonly Row[]): void => {
    const last = new Map<string, number>()
    const seen = new Set<string>()
    for (const [, text] of rows) {
      const { device, n } = JSON.parse(text) as { device: string; n: number }
      if (seen.has(`${device}.${n}`)) fail('duplicated', `${device}.${n} stands twice`)
      else if (n < (last.get(device) ?? 0)) fail('duplicated', `${device}.${n} stands after ${last.get(device)}`)
      seen.add(`${device}.${n}`)
      last.set(device, Math.max(n, last.get(device) ?? 0))
    }
  }

  const compare: History['compare'] = (rows, said) => {
    checkRows(rows)
    const there = new Set(rows.map(([, text]) => text))
    for (const [name, texts] of said.phones) {
      for (const text of texts) if (!there.has(text)) fail('falseMarks', `${name} says ${idOf(text)} is on the server`)
    }
    for (const text of said.stored) if (!there.has(text)) fail('lost', idOf(text))
  }

  const whatIsSaid = (): Said => ({
    stored: [...stored.values()],
    phones: new Map([...engines].map(([name, engine]) => [name, textsOf(engine, true)])),
  })

  return {
    counts,
    acknowledged: () => stored.size,
    putOff: reason => delays.get(reason) ?? 0,
    watch: (name, engine) => void engines.set(name, engine),
    answered,
    whatIsSaid,
    compare,
    compareEnd: rows => {
      compare(rows, whatIsSaid())
      const there = rows.map(([, text]) => text).sort()
      for (const [name, engine] of engines) {
        const held = textsOf(engine, false).sort()
        if (held.join('\n') !== there.join('\n')) fail('other', `${name} holds ${held.length} of ${there.length} acts`)
        if (engine.foot().waiting > 0) fail('other', `${name} still has ${engine.foot().waiting} to send`)
      }
    },
    fail,
  }
}
