import { collect, nothingCollected } from '#client/sync/hand-over/collecting.ts'
import { framesOf } from '#client/sync/hand-over/frames.ts'
import { standingsOf } from '#core/log/fold.ts'
import { textOfOp } from '#core/log/op.ts'
import type { DeviceId, GroupId, LogId } from '#core/values/ids.ts'
import type { Dice } from './dice.ts'
import type { Ledger } from './ledger.ts'
import { comeIn, hash, type Page, type Phone, say } from './phone.ts'
import { newKey } from './server.ts'
import type { World } from './world.ts'

/** What people do with their phones; each act says which it is, so that it can be looked for at the end. */
export interface Golfers {
  /** The phone's person acts now and then until the page ends. */
  play(phone: Phone): void
  /** Everybody puts the phone away. */
  stop(): void
}

export interface GolfersParts {
  readonly world: World
  readonly ledger: Ledger
  readonly phones: readonly Phone[]
  readonly count: (fault: 'forbidden' | 'handed over' | 'newer fact' | 'newer op') => void
}

const balls = ['alder', 'birch', 'cedar', 'elm']

export function createGolfers({ world, ledger, phones, count }: GolfersParts): Golfers {
  const { dice } = world
  const lastKeys = new Map<Phone, string>()
  let acts = 0
  let isOver = false

  const write = async (page: Page, key: string, value: number | string | null): Promise<void> => {
    const act = `act ${++acts}`
    await say(page, key, value, act)
    if (!page.life.isOver) ledger.ops++
  }

  const score = (phone: Phone, page: Page, group: GroupId): Promise<void> => {
    const ball = `${dice.pick(balls as [string, ...string[]])}-${group}`
    const other = `g/${group}/score/${ball}/${dice.between(1, 9)}/1/card`
    // A slip is mended at once more often than later.
    const key = dice.chance(0.4) ? (lastKeys.get(phone) ?? other) : other
    lastKeys.set(phone, key)
    const isThere = standingsOf(page.engine.holding().state, key).length > 0
    return write(page, key, isThere && dice.chance(0.1) ? null : dice.between(2, 9))
  }

  const act = async (phone: Phone, page: Page): Promise<void> => {
    if (phone.role === 'viewer') return page.engine.wake()
    const groups = groupsOf(phone, phones)
    if (dice.chance(0.06)) return handOver(phone, page)
    if (dice.chance(0.04)) return page.engine.wake()
    if (phone.role === 'desk' && dice.chance(0.05)) {
      const isNewer = dice.chance(0.4)
      if (isNewer) count('newer fact')
      return write(page, isNewer ? newKey : 'title', isNewer ? '2026-08-14' : `Day ${dice.below(100)}`)
    }
    if (phone.role === 'scorer' && dice.chance(0.03)) {
      count('forbidden')
      return write(page, 'title', 'Ours')
    }
    if (dice.chance(0.01)) return bringNewer(phone, page)
    return score(phone, page, phone.group ?? dice.pick(groups as [GroupId, ...GroupId[]]))
  }

  /** Another phone of the outing reads this one's codes off its screen, some twice and in any order. */
  const handOver = async (phone: Phone, page: Page): Promise<void> => {
    const others = phones.filter(other => other !== phone && other.log === phone.log && other.page)
    const [other] = dice.shuffled(others)
    if (!other?.page) return
    // An exchange may break off, and a file may hold a part: what corrects then comes before what it corrects.
    const isWhole = dice.chance(0.5)
    const shown = [...page.engine.holding().ops.values()].filter(
      ({ mark }) => mark.kind !== 'refused' && (isWhole || dice.chance(0.5)),
    )
    if (shown.length === 0) return
    const data = Buffer.from(JSON.stringify(shown.map(({ text }) => text))).toString('base64url')
    const codes = framesOf(data, hash)
    const texts = readCodes(dice, codes)
    count('handed over')
    await other.page.engine.bring(texts)
  }

  /** A file from a later version: this one keeps it and passes it on. */
  const bringNewer = (phone: Phone, page: Page): Promise<void> => {
    count('newer op')
    const device = `later-${dice.below(2 ** 31).toString(36)}` as DeviceId
    const fact = { key: `g/${phone.group ?? 'g1'}/wind/1`, value: 'light', replaces: [] }
    const head = { log: phone.log, scope: (phone.group ?? 'g1') as GroupId, device, n: 1, tick: 1, at: world.now() }
    return page.engine.bring([textOfOp({ ...head, act: 'wind noted', facts: [fact] })])
  }

  const play = (phone: Phone): void => {
    const page = phone.page
    if (!page) return
    const next = (): void => {
      if (isOver) return
      void turn(phone, page)
      world.after(dice.between(2_000, 16_000), page.life, next)
    }
    world.after(dice.between(500, 4_000), page.life, next)
  }

  const turn = async (phone: Phone, page: Page): Promise<void> => {
    if (await comeIn(page)) await act(phone, page)
  }

  return {
    play,
    stop: () => {
      isOver = true
    },
  }
}

const groupsOf = ({ log }: { readonly log: LogId }, phones: readonly Phone[]): GroupId[] => {
  const groups = new Set(phones.flatMap(phone => (phone.log === log && phone.group ? [phone.group] : [])))
  return groups.size > 0 ? [...groups] : ['g1' as GroupId]
}

function readCodes(dice: Dice, codes: readonly string[]): string[] {
  let so = nothingCollected
  const seen = dice.shuffled([...codes, ...codes.filter(() => dice.chance(0.3))])
  for (const code of seen) {
    const collected = collect(so, code, hash)
    if (collected.kind === 'whole') return JSON.parse(Buffer.from(collected.data, 'base64url').toString()) as string[]
    if (collected.kind === 'kept' || collected.kind === 'another') so = collected.so
  }
  throw new Error('the codes did not make the text that was shown')
}
