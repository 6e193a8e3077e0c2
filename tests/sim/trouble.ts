import type { OpId } from '#core/values/ids.ts'
import { type Air, goodAir } from './air.ts'
import type { Kept } from './disk.ts'
import type { Golfers } from './golfers.ts'
import type { Ledger } from './ledger.ts'
import { closePage, openPage, type Phone, type PhoneParts, say } from './phone.ts'
import type { Server } from './server.ts'
import { startLife, type World } from './world.ts'

/** Everything that can go wrong by itself. */
export const troubles = [
  'link cut',
  'network silent',
  'network away',
  'network slow',
  'web sockets blocked',
  'HTTP rough',
  'somebody else answers',
  'page killed',
  'page killed, storage lost',
  'page killed, old storage back',
  'storage failing',
  'storage slow',
  'phone clock jumps',
  'old page',
  'server killed',
  'server killed in silence',
  'server restored from a backup',
  'server disk full',
  'server busy',
  'server clock jumps',
  'old server',
  'phone voided',
] as const
export type Trouble = (typeof troubles)[number]

export interface TroubleParts {
  readonly world: World
  readonly server: Server
  readonly ledger: Ledger
  readonly golfers: Golfers
  readonly phones: readonly Phone[]
  readonly phoneParts: PhoneParts
  readonly count: (trouble: Trouble) => void
}

export interface Troubles {
  /** One after the other, each for a while, until `untilMs`. */
  begin(untilMs: number): void
  /** All is well again: the network, every page, the server. */
  end(): void
}

export function createTroubles(parts: TroubleParts): Troubles {
  const { world, server, ledger, golfers, phones, phoneParts, count } = parts
  const { dice } = world
  const life = startLife()
  const oldStorage = new Map<Phone, Kept>()
  let undo = new Set<() => void>()

  /** What a phone held when it lost its storage. */
  const lostBefore = new Map<Phone, readonly OpId[]>()
  const everHeld = (phone: Phone): OpId[] => [...(lostBefore.get(phone) ?? []), ...(phone.disk.kept?.ops.keys() ?? [])]
  /** Ops that a phone has forgotten and may name anew, which a server holds. */
  const forgotten = new Set<OpId>()
  /** Whether the server can say that the names it would take again are taken. */
  const isSafelyForgotten = (phone: Phone, old: Kept): boolean => {
    const lost = everHeld(phone).filter(id => !old.ops.has(id))
    if (lost.some(id => !server.held(phone.log).has(id))) return false
    for (const id of lost) forgotten.add(id)
    return true
  }

  const anyPhone = (): Phone => dice.pick(phones as [Phone, ...Phone[]])
  const later = (most: number, work: () => void): void => {
    const once = (): void => {
      if (undo.delete(once)) work()
    }
    undo.add(once)
    world.after(dice.between(200, most), life, once)
  }
  /** Something about the way to the server, for a while. */
  const air = (change: Partial<Air>, most: number, isCut: boolean): void => {
    const phone = anyPhone()
    Object.assign(phone.air, change)
    if (isCut) phone.page?.link.cut()
    later(most, () => {
      Object.assign(phone.air, goodAir())
      if (isCut) phone.page?.link.cut()
    })
  }
  const reopen = (phone: Phone): void => {
    if (phone.page) return
    openPage(phoneParts, phone)
    golfers.play(phone)
  }
  const kill = (phone: Phone): void => {
    closePage(phone)
    later(30_000, () => reopen(phone))
  }
  const killServer = (isSeen: boolean): void => {
    server.kill()
    for (const phone of phones) if (isSeen || dice.chance(0.3)) phone.page?.link.cut()
    later(20_000, server.start)
  }
  const forAWhile = <Of extends object>(of: Of, change: Partial<Of>, well: Partial<Of>, most: number): void => {
    Object.assign(of, change)
    later(most, () => Object.assign(of, well))
  }

  /** False where it cannot happen now. */
  const make: Readonly<Record<Trouble, () => unknown>> = {
    'link cut': () => anyPhone().page?.link.cut(),
    'network silent': () => air({ isSilent: true }, 60_000, false),
    'network away': () => air({ isAway: true }, 120_000, true),
    'network slow': () => air({ fastestMs: 500, slowestMs: 9_000 }, 60_000, false),
    'web sockets blocked': () => air({ isPolling: true }, 120_000, true),
    'HTTP rough': () => air({ isPolling: true, isRough: true, slowestMs: 3_000 }, 120_000, true),
    'somebody else answers': () => air({ isStrange: true }, 40_000, false),
    'page killed': () => kill(anyPhone()),
    'page killed, storage lost': () => {
      const phone = anyPhone()
      // Who founded the outing has to have been heard by somebody.
      if (server.held(phone.log).size < 4) return false
      kill(phone)
      lostBefore.set(phone, everHeld(phone))
      phone.disk.kept = null
      ledger.destroyed(phones)
      return true
    },
    'page killed, old storage back': () => {
      const phone = anyPhone()
      const old = oldStorage.get(phone)
      if (!old || !isSafelyForgotten(phone, old)) return false
      kill(phone)
      lostBefore.set(phone, everHeld(phone))
      phone.disk.kept = old
      ledger.destroyed(phones)
      return true
    },
    'storage failing': () => forAWhile(anyPhone().disk, { isFailing: true }, { isFailing: false }, 20_000),
    'storage slow': () => forAWhile(anyPhone().disk, { slowestMs: 3_000 }, { slowestMs: 6 }, 30_000),
    'phone clock jumps': () => Object.assign(anyPhone(), { clockOffMs: dice.between(-86_400_000, 86_400_000) }),
    'old page': () => {
      const phone = anyPhone()
      phone.protocol = 0
      phone.page?.link.cut()
      later(60_000, () => {
        phone.protocol = null
        kill(phone)
      })
    },
    'server killed': () => killServer(true),
    'server killed in silence': () => killServer(false),
    'server restored from a backup': () => {
      // Never to before what a phone forgot: two contents of one name that no server has seen cannot be told apart.
      if (!server.restore(forgotten)) return false
      ledger.destroyed(phones)
      for (const phone of phones) if (dice.chance(0.6)) phone.page?.link.cut()
      later(10_000, server.start)
      return true
    },
    'server disk full': () => forAWhile(server, { isFull: true }, { isFull: false }, 20_000),
    'server busy': () => forAWhile(server, { isBusy: true }, { isBusy: false }, 20_000),
    'server clock jumps': () => Object.assign(server, { clockOffMs: dice.between(-7_200_000, 7_200_000) }),
    'old server': () => forAWhile(server, { isOld: true }, { isOld: false }, 90_000),
    'phone voided': () => voidOne(),
  }

  /** The desk takes one phone out that is no desk. */
  const voidOne = (): boolean => {
    const desk = phones.find(({ role, page, isVoided }) => role === 'desk' && page && !isVoided)
    const [out] = dice.shuffled(
      phones.filter(({ log, role, page, isVoided }) => log === desk?.log && role !== 'desk' && page && !isVoided),
    )
    if (!desk?.page || !out?.page || phones.some(({ isVoided }) => isVoided)) return false
    const { device } = out.page.engine.holding().record
    out.isVoided = true
    void say(desk.page, `void/key/${device}`, true, 'phone taken out')
    ledger.destroyed(phones)
    return true
  }

  const happen = (untilMs: number): void => {
    if (world.now() >= untilMs) return
    const trouble = dice.pick(troubles)
    if (make[trouble]() !== false) count(trouble)
    world.after(dice.between(500, 14_000), life, () => happen(untilMs))
  }
  const keepCopies = (): void => {
    const phone = anyPhone()
    if (phone.disk.kept) oldStorage.set(phone, phone.disk.kept)
    if (dice.chance(0.5)) server.backUp()
    world.after(dice.between(5_000, 40_000), life, keepCopies)
  }

  return {
    begin: untilMs => {
      world.after(dice.between(5_000, 15_000), life, keepCopies)
      world.after(dice.between(1_000, 10_000), life, () => happen(untilMs))
    },
    end: () => {
      for (const work of undo) work()
      undo = new Set()
      life.isOver = true
      server.start()
      for (const phone of phones) {
        Object.assign(phone.air, goodAir())
        reopen(phone)
      }
    },
  }
}
