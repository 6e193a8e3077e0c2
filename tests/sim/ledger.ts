import type { HeldOp } from '#client/sync/held-op.ts'
import type { LogRecord } from '#client/sync/log-store.ts'
import { isKeyOf, type Op, opIdOf } from '#core/log/op.ts'
import type { DeviceId, GroupId, LogId, OpId } from '#core/values/ids.ts'
import type { Entry } from '#server/store/store.ts'
import type { Disk, Kept } from './disk.ts'
import type { Watch } from './link.ts'
import type { Phone } from './phone.ts'
import { plainFold } from './plain-fold.ts'
import type { Server } from './server.ts'

/** What must never happen, counted, with the first words of each for whoever looks for the cause. */
export interface Faults {
  lost: number
  duplicated: number
  diverged: number
  falseMarks: number
  /** Own ops out of their order, a key that wrote beyond its rights, a log read by a phone of another. */
  outOfRights: number
  readonly words: string[]
}

/**
 * What the run itself knows of every act, apart from the product: who said what, and which acts somebody was told are
 * safe. It sees every message and every write, and shares no code with what it watches over.
 */
export interface Ledger {
  readonly faults: Faults
  acknowledged: number
  /** Acts that somebody said and saw. */
  ops: number
  /** After each event, for the phones that changed. */
  checkPhone(phone: Phone): void
  watchOf(phone: Phone): Watch
  stored(entry: Entry): void
  /** Something was destroyed: only what somebody still holds can be asked for at the end. */
  destroyed(phones: readonly Phone[]): void
  /** At the end, when everything has been well for long. */
  settle(phones: readonly Phone[]): void
}

interface Told {
  readonly ops?: readonly (readonly [number, string, ...unknown[]])[]
  readonly part?: { readonly ops: Told['ops'] }
  readonly parts?: readonly { readonly ops: Told['ops'] }[]
}

export function createLedger(server: Server, phonesOf: () => readonly Phone[]): Ledger {
  const faults: Faults = { lost: 0, duplicated: 0, diverged: 0, falseMarks: 0, outOfRights: 0, words: [] }
  /** Acts that were shown as kept on the phone, or that the server answered as stored. */
  const safe = new Set<string>()
  /** Names that a phone gave up because they were taken, and those that it took instead. */
  const renamed = new Set<DeviceId>()
  /** Everything that a server has ever stored, as texts. */
  const everStored = new Set<string>()

  const fail = (kind: Exclude<keyof Faults, 'words'>, words: string): void => {
    faults[kind]++
    if (faults.words.length < 8) faults.words.push(`${kind}: ${words}`)
  }

  const ledger: Ledger = {
    faults,
    acknowledged: 0,
    ops: 0,
    checkPhone: phone => {
      const engine = phone.page?.engine
      if (!engine || !phone.disk.kept) return
      const { ops, record } = engine.holding()
      if (record.formerly) for (const name of [record.device, ...record.formerly]) renamed.add(name)
      const isOfThisEra = record.era !== null && record.era === server.era(phone.log)
      const isSaved = engine.foot().phone === 'saved'
      const there = server.held(phone.log)
      const isOnDisk = keptIn(phone.disk.kept, record)
      for (const [id, held] of ops) {
        // What only a phone that was taken out still holds can reach nobody any more.
        if (isSaved && !phone.isVoided) safe.add(`${held.op.log} ${held.op.act}`)
        if (isSaved && !isOnDisk(held)) fail('falseMarks', `${phone.name} says ${id} is kept, and it is not`)
        const isSaidThere = held.mark.kind === 'none'
        if (isSaidThere && isOfThisEra && there.get(id)?.text !== held.text) {
          fail('falseMarks', `${phone.name} says ${id} is on the server, and it is not`)
        }
      }
      const waiting = [...ops.values()].filter(({ mark }) => mark.kind === 'waiting' || mark.kind === 'later').length
      if (engine.foot().waiting !== waiting) fail('falseMarks', `${phone.name} counts what waits wrongly`)
    },
    watchOf: phone => ({
      sends: (question, message) => {
        if (question === 'push') checkOrder(phone, (message as { ops: readonly string[] }).ops)
      },
      hears: (question, sent, heard) => {
        checkRead(phone, heard as Told)
        if (question === 'push') noteVerdicts(sent as { ops: readonly string[] }, heard)
      },
    }),
    stored: entry => {
      everStored.add(entry.text)
      checkRights(entry)
    },
    destroyed: phones => {
      const left = new Set<string>()
      const logs = new Set(phones.map(({ log }) => log))
      for (const log of logs) for (const { text } of server.held(log).values()) left.add(actOf(text))
      for (const { disk, isVoided } of phones) if (!isVoided) for (const act of actsOn(disk)) left.add(act)
      for (const act of safe) if (!left.has(act)) safe.delete(act)
    },
    settle: phones => {
      const logs = new Set(phones.map(({ log }) => log))
      for (const log of logs) checkLog(log, phones)
      for (const phone of phones) if (!phone.isVoided) checkEnd(phone)
    },
  }

  /**
   * Its own in the order in which they were said; its key may go before all, and what a server has had before comes
   * back to a phone by hand in any order.
   */
  const checkOrder = (phone: Phone, texts: readonly string[]): void => {
    const record = phone.page?.engine.holding().record
    const said = texts.filter(text => !everStored.has(text)).map(parsed)
    const own = said.filter(op => op.device === record?.device)
    const rest = own[0]?.facts.some(({ key }) => key === `key/${record?.device}`) ? own.slice(1) : own
    for (const [index, op] of rest.entries()) {
      const next = rest[index + 1]
      if (next && next.n < op.n) fail('outOfRights', `${phone.name} sends ${next.n} after ${op.n}`)
    }
  }

  const checkRead = (phone: Phone, heard: Told): void => {
    const parts = [heard, ...(heard.part ? [heard.part] : []), ...(heard.parts ?? [])]
    for (const { ops = [] } of parts) {
      for (const row of ops) {
        const text = Array.isArray(row) ? row[1] : null
        if (typeof text === 'string' && parsed(text).log !== phone.log) {
          fail('outOfRights', `${phone.name} reads another outing`)
        }
      }
    }
  }

  const noteVerdicts = ({ ops }: { readonly ops: readonly string[] }, heard: unknown): void => {
    const { verdicts = [] } = heard as { readonly verdicts?: readonly { readonly kind: string }[] }
    for (const [index, { kind }] of verdicts.entries()) {
      const text = ops[index]
      if (text === undefined || (kind !== 'stored' && kind !== 'already stored')) continue
      if (kind === 'stored') ledger.acknowledged++
      safe.add(actOf(text))
    }
  }

  /** By what each phone was invited to be, said again here: the roles table is what is watched over. */
  const checkRights = ({ log, text, device, carrier }: Entry): void => {
    const op = parsed(text)
    const writer = carrier ?? device
    const phone = phonesOf().find(({ name, log: own }) => own === log && writer.startsWith(`${name}-`))
    if (!phone) fail('outOfRights', `${writer} wrote in ${log}`)
    if (!phone || phone.role === 'desk') return
    const isOwn = (key: string): boolean => key === `key/${writer}` || isInvite(key)
    const isInvite = (key: string): boolean => phone.role === 'scorer' && key.startsWith('invite/')
    const isOfGroup = (key: string): boolean => phone.role === 'scorer' && isKeyOf(phone.group as GroupId, key)
    const beyond = op.facts.find(({ key }) => !isOwn(key) && !isOfGroup(key))
    if (beyond) fail('outOfRights', `${writer}, ${phone.role} of ${phone.group}, wrote ${beyond.key}`)
  }

  const checkLog = (log: LogId, phones: readonly Phone[]): void => {
    const seen = new Map<string, Op>()
    for (const { text } of server.held(log).values()) {
      const act = actOf(text)
      const op = parsed(text)
      const other = seen.get(act)
      if (other !== undefined && isCounted(act) && !isSaidAgain(other, op)) {
        fail('duplicated', `"${act}" is ${opIdOf(other)} and ${opIdOf(op)}`)
      }
      seen.set(act, op)
    }
    const own = phones.filter(phone => phone.log === log)
    const open = new Set(own.flatMap(phone => actsNotThere(phone)))
    for (const act of safe) {
      const isOfLog = act.startsWith(`${log} `)
      if (isOfLog && !seen.has(act) && !open.has(act)) fail('lost', `"${act}"`)
    }
  }

  /** By a phone whose name was taken, perhaps from the same old copy of its storage twice: it says the same. */
  const isSaidAgain = (one: Op, other: Op): boolean =>
    renamed.has(one.device) && renamed.has(other.device) && saidBy(one) === saidBy(other)

  /** All that this phone holds, and all that the server has for it, gives what it shows. */
  const checkEnd = (phone: Phone): void => {
    const engine = phone.page?.engine
    if (!engine) return
    const { ops, state } = engine.holding()
    const texts = new Map<OpId, string>()
    for (const [id, { text, mark }] of ops) if (mark.kind !== 'refused') texts.set(id, text)
    const shown = [...state.current.values()].flatMap(part =>
      [...part].flatMap(([key, standings]) => standings.map(({ op }) => `${key} ${op}`)),
    )
    if (shown.sort().join('\n') !== plainFold(texts.values()).join('\n')) {
      fail('diverged', `${phone.name} shows other than it holds`)
    }
    const feeds = engine.holding().record.feeds.map(([feed]) => feed)
    for (const [id, { text }] of server.held(phone.log)) {
      const { scope } = parsed(text)
      const isFollowed = scope === null || feeds.includes('all') || feeds.includes(`g/${scope}`)
      if (isFollowed && texts.get(id) !== text) fail('diverged', `${phone.name} lacks ${id}`)
    }
    for (const [id, { mark, op }] of ops) {
      const isPutOff = mark.kind === 'later' && (mark.reason === 'newer' || mark.reason === 'desk')
      if (mark.kind === 'none' || mark.kind === 'refused' || isPutOff) continue
      fail('diverged', `${phone.name} still holds ${id} back: ${op.act}, ${JSON.stringify(mark)}`)
    }
  }

  return ledger
}

const parsed = (text: string): Op => JSON.parse(text) as Op
const actOf = (text: string): string => {
  const op = parsed(text)
  return `${op.log} ${op.act}`
}
const saidBy = ({ facts }: Op): string => JSON.stringify(facts.map(({ key, value }) => [key, value]))

/** A phone gives its key again under each of its names. */
const isCounted = (act: string): boolean => !act.endsWith('phone joined')

/**
 * Under its name, or in the moment before the page hears of a new one already under that, saying the same. A key is
 * another under each name.
 */
const keptIn = ({ record, ops }: Kept, shown: LogRecord): ((held: HeldOp) => boolean) => {
  const sayingOf = (op: Op): string => `${op.act} ${isCounted(op.act) ? saidBy(op) : ''}`
  const renamed = new Set(
    [...ops.values()].flatMap(({ op }) =>
      op.device === record.device && op.device !== shown.device ? sayingOf(op) : [],
    ),
  )
  return ({ op, text }) =>
    ops.get(opIdOf(op))?.text === text || (record.formerly?.includes(op.device) === true && renamed.has(sayingOf(op)))
}

const actsOn = ({ kept }: Disk): string[] => (kept ? [...kept.ops.values()].map(({ text }) => actOf(text)) : [])

/** What a phone shows as refused, as put off for a reason that it names, or as nobody's any more since it was taken out. */
const actsNotThere = ({ page, isVoided }: Phone): string[] => {
  const ops = page?.engine.holding().ops.values() ?? []
  const isOpen = ({ mark: { kind } }: HeldOp): boolean =>
    kind === 'refused' || kind === 'later' || (isVoided && kind === 'waiting')
  return [...ops].filter(isOpen).map(({ text }) => actOf(text))
}
