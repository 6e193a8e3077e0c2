import { type cardHandicapDuties, ruleOnCardHandicap } from '#core/card/rulings/card-handicap.ts'
import type { lowScoreReasons } from '#core/card/rulings/hole-score.ts'
import { ruleOnMissingCertification } from '#core/card/rulings/missing-certification.ts'
import { firstPlaceOfLatePartner } from '#core/formats/rulings/late-partner.ts'
import { ruleOnMatchHandicap } from '#core/formats/rulings/match-handicap.ts'
import { type ReturnedHoleRuling, ruleOnReturnedHole } from '#core/formats/rulings/returned-score.ts'
import { ruleOnStartTime, type StartTimeRuling, type startForms } from '#core/formats/rulings/start-time.ts'
import { ruleOnTradedHoles } from '#core/formats/rulings/traded-holes.ts'
import { ruleOnUnfinishedSide } from '#core/formats/rulings/unfinished-side.ts'
import { ruleOnWrittenSum } from '#core/formats/rulings/written-sum.ts'
import {
  outcomeOfCardHandicap,
  outcomeOfCertification,
  outcomeOfMatchHandicap,
  outcomeOfReturnedHole,
  outcomeOfStartTime,
  type RulingOutcome,
} from '#core/outing/ruling-outcome.ts'
import { say } from '../../words/say-any.ts'
import { draftOfOutcome, type RulingDraft } from './ruling-draft.ts'

/** What may have happened that the Rules have an answer for. */
export const situations = [
  'hole-score',
  'card-handicap',
  'match-handicap',
  'certification',
  'start',
  'unfinished',
  'late-partner',
  'traded-holes',
  'written-sum',
] as const
export type Situation = (typeof situations)[number]

/** The forms of a wrong hole score; of maximum score the cap alone decides, which the board shows. */
export const cardForms = ['stroke-play', 'stableford', 'par-bogey'] as const

/** What was seen of it, as it is typed. */
export interface Seen {
  readonly cardForm: (typeof cardForms)[number]
  readonly par: string
  /** Strokes received on the hole. */
  readonly received: string
  readonly returned: string
  readonly actual: string
  readonly why: (typeof lowScoreReasons)[number]
  readonly isBeforeClose: boolean
  readonly duty: (typeof cardHandicapDuties)[number]
  readonly onCard: string
  readonly declared: string
  readonly correct: string
  readonly affectsStrokes: boolean
  readonly isInTime: boolean
  readonly hasLocalRule: boolean
  readonly minutes: string
  readonly form: (typeof startForms)[number]
  readonly ball: string
  /** The hole in play when the late partner comes, `hole/lap`. */
  readonly inPlay: string
  readonly partnerHasStarted: boolean
  readonly anyoneHasStarted: boolean
  readonly knew: boolean
  readonly written: string
}

/** What the outing knows of the ball that it is about. */
export interface Known {
  /** Its order of play, `hole/lap` each, and the number of each hole. */
  readonly holes: readonly { readonly value: string; readonly text: string }[]
  /** The sum of its scores; null while a hole is open or without one. */
  readonly gross: number | null
}

export const nothingKnown: Known = { holes: [], gross: null }

export const nothingSeen: Seen = {
  cardForm: 'stroke-play',
  par: '4',
  received: '0',
  returned: '',
  actual: '',
  why: 'other',
  isBeforeClose: true,
  duty: 'committee',
  onCard: '',
  declared: '',
  correct: '',
  affectsStrokes: true,
  isInTime: false,
  hasLocalRule: false,
  minutes: '',
  form: 'stroke-play',
  ball: '',
  inPlay: '',
  partnerHasStarted: false,
  anyoneHasStarted: false,
  knew: true,
  written: '',
}

/** What the Rules say, in words, and what it would be as a ruling. */
export interface Proposal {
  readonly text: string
  readonly draft: Partial<RulingDraft>
}

/** Null while a figure is missing. */
export function proposalOf(situation: Situation, seen: Seen, known: Known = nothingKnown): Proposal | null {
  switch (situation) {
    case 'hole-score':
      return onHoleScore(seen)
    case 'card-handicap':
      return onCardHandicap(seen)
    case 'match-handicap':
      return onMatchHandicap(seen)
    case 'certification':
      return onCertification(seen)
    case 'start':
      return onStart(seen)
    case 'unfinished':
      return onUnfinished(seen)
    case 'late-partner':
      return onLatePartner(seen, known)
    case 'traded-holes':
      return onTradedHoles(seen)
    case 'written-sum':
      return onWrittenSum(seen, known)
  }
}

const wholeOf = (text: string): number | null => (/^[+-]?\d{1,3}$/.test(text.trim()) ? Number(text) : null)

const noPenalty = (text: string, rule: string): Proposal => proposed(text, { kind: 'no-penalty', rule })

const disqualified = (text: string, rule: string): Proposal => proposed(text, { kind: 'disqualified', rule })

const proposed = (text: string, outcome: RulingOutcome): Proposal => ({ text, draft: draftOfOutcome(outcome) })

function onHoleScore(seen: Seen): Proposal | null {
  const [made, written] = [wholeOf(seen.actual), wholeOf(seen.returned)]
  if (made === null || (seen.returned.trim() !== '' && written === null)) return null
  const [par, strokes] = [wholeOf(seen.par), wholeOf(seen.received)]
  if (seen.cardForm !== 'stroke-play' && (par === null || strokes === null)) return null
  const ruling = ruleOnReturnedHole(
    { kind: seen.cardForm },
    {
      par: par ?? 0,
      strokes: strokes ?? 0,
      returned: written,
      actual: made,
      reason: seen.why,
      isBeforeClose: seen.isBeforeClose,
    },
  )
  return proposed(holeScoreWords(ruling, written), outcomeOfReturnedHole(written, ruling))
}

function holeScoreWords(ruling: ReturnedHoleRuling, written: number | null): string {
  switch (ruling.code) {
    case 'disqualified':
      return say('propose-disqualified')
    case 'no-return':
      return say('propose-no-return')
    case 'stands':
      return say('propose-stands', { n: ruling.score })
    case 'committee-adds-penalty':
      return say('propose-adds', { n: ruling.score - (written ?? ruling.score) })
  }
}

function onCardHandicap({ duty, onCard, correct, affectsStrokes }: Seen): Proposal | null {
  const right = wholeOf(correct)
  if (right === null || (onCard.trim() !== '' && wholeOf(onCard) === null)) return null
  const ruling = ruleOnCardHandicap(duty, { onCard: wholeOf(onCard), correct: right, affectsStrokes })
  const outcome = outcomeOfCardHandicap(right, ruling)
  if (ruling.code === 'disqualified') return proposed(say('propose-disqualified'), outcome)
  const { netOff } = ruling
  return proposed(say('propose-net-off', { n: netOff < 0 ? `+${-netOff}` : netOff }), outcome)
}

function onMatchHandicap({ declared, correct, affectsStrokes, isInTime }: Seen): Proposal | null {
  const [told, right] = [wholeOf(declared), wholeOf(correct)]
  if (told === null || right === null) return null
  const ruling = ruleOnMatchHandicap({ declared: told, correct: right, affectsStrokes, isCorrectedInTime: isInTime })
  const text =
    ruling.code === 'disqualified' ? say('propose-disqualified') : say('propose-plays-off', { n: ruling.playsOff })
  return proposed(text, outcomeOfMatchHandicap(right, ruling))
}

function onCertification({ hasLocalRule }: Seen): Proposal {
  const ruling = ruleOnMissingCertification(hasLocalRule)
  const text = say(ruling.code === 'disqualified' ? 'propose-disqualified' : 'propose-two-last')
  return proposed(text, outcomeOfCertification(ruling))
}

function onStart({ minutes, form }: Seen): Proposal | null {
  const late = wholeOf(minutes)
  if (late === null) return null
  const ruling = ruleOnStartTime(late, form)
  return proposed(startWords(ruling), outcomeOfStartTime(ruling))
}

function startWords(ruling: StartTimeRuling): string {
  if (ruling.code !== 'general-penalty') return say(`propose-${ruling.code}`)
  switch (ruling.penalty.unit) {
    case 'strokes':
      return say('propose-two-first')
    case 'points':
      return say('propose-points')
    case 'holes':
      return say('propose-holes')
    case 'hole-lost':
      return say('propose-hole-lost')
  }
}

function onUnfinished({ form }: Seen): Proposal {
  const rule = 'Rules of Golf 23.2'
  const ruling = ruleOnUnfinishedSide(form === 'match' ? 'match' : 'stroke-play')
  if (ruling === 'loses-hole') return noPenalty(say('propose-loses-hole'), rule)
  return disqualified(say('propose-unless-corrected'), rule)
}

function onLatePartner(seen: Seen, { holes }: Known): Proposal | null {
  const { ball, inPlay, partnerHasStarted, anyoneHasStarted, form } = seen
  const place = holes.findIndex(({ value }) => value === inPlay) + 1
  if (ball === '' || place === 0) return null
  const rule = 'Rules of Golf 23.4'
  const first = firstPlaceOfLatePartner(form === 'match' ? 'match' : 'stroke-play', {
    place,
    partnerHasStarted,
    anyoneHasStarted: anyoneHasStarted || partnerHasStarted,
  })
  const from = holes[first - 1]
  if (from === undefined) return { text: say('propose-too-late'), draft: { kind: 'no-penalty', ball, rule } }
  return {
    text: say('propose-joins', { hole: from.text }),
    draft: { kind: 'no-penalty', ball, joinsAt: from.value, rule },
  }
}

function onTradedHoles({ knew }: Seen): Proposal {
  const rule = 'Rules of Golf 1.3b(1), clarification 3.2b(1)/1'
  if (ruleOnTradedHoles(knew) === 'stands-as-played') return noPenalty(say('propose-as-played'), rule)
  return disqualified(say('propose-both-disqualified'), rule)
}

function onWrittenSum({ ball, written }: Seen, { gross }: Known): Proposal | null {
  const sum = wholeOf(written)
  if (ball === '' || gross === null || sum === null) return null
  const { counts } = ruleOnWrittenSum(gross)
  const text = say(sum === counts ? 'propose-sum-right' : 'propose-sum', { n: counts })
  const reason = say('propose-sum-reason', { written: sum, n: counts })
  return { text, draft: { kind: 'no-penalty', ball, rule: 'Rules of Golf 3.3b(4)', reason } }
}
