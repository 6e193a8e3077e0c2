import { type cardHandicapDuties, ruleOnCardHandicap } from '#core/card/rulings/card-handicap.ts'
import type { lowScoreReasons } from '#core/card/rulings/hole-score.ts'
import { ruleOnMissingCertification } from '#core/card/rulings/missing-certification.ts'
import { firstPlaceOfLatePartner } from '#core/formats/rulings/late-partner.ts'
import { ruleOnMatchHandicap } from '#core/formats/rulings/match-handicap.ts'
import { ruleOnReturnedHole } from '#core/formats/rulings/returned-score.ts'
import { ruleOnStartTime, type startForms } from '#core/formats/rulings/start-time.ts'
import { ruleOnTradedHoles } from '#core/formats/rulings/traded-holes.ts'
import { ruleOnUnfinishedSide } from '#core/formats/rulings/unfinished-side.ts'
import { ruleOnWrittenSum } from '#core/formats/rulings/written-sum.ts'
import { say } from '../../words/say.ts'
import type { RulingDraft } from './ruling-draft.ts'

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

const noPenalty = (text: string, rule: string): Proposal => ({ text, draft: { kind: 'no-penalty', rule } })

const disqualified = (rule: string): Proposal => ({
  text: say('propose-disqualified'),
  draft: { kind: 'disqualified', hole: '', rule },
})

function onHoleScore(seen: Seen): Proposal | null {
  const [made, written] = [wholeOf(seen.actual), wholeOf(seen.returned)]
  if (made === null || (seen.returned.trim() !== '' && written === null)) return null
  const [par, strokes] = [wholeOf(seen.par), wholeOf(seen.received)]
  if (seen.cardForm !== 'stroke-play' && (par === null || strokes === null)) return null
  const rule = 'Rules of Golf 3.3b(3)'
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
  switch (ruling.code) {
    case 'disqualified':
      return disqualified(rule)
    case 'no-return':
      return noPenalty(say('propose-no-return'), rule)
    case 'stands':
      return noPenalty(say('propose-stands', { n: ruling.score }), rule)
    case 'committee-adds-penalty': {
      const missing = made - (written ?? made)
      return { text: say('propose-adds', { n: missing }), draft: { kind: 'penalty', strokes: String(missing), rule } }
    }
  }
}

function onCardHandicap({ duty, onCard, correct, affectsStrokes }: Seen): Proposal | null {
  const right = wholeOf(correct)
  if (right === null || (onCard.trim() !== '' && wholeOf(onCard) === null)) return null
  const rule = 'Rules of Golf 3.3b(4)'
  const ruling = ruleOnCardHandicap(duty, { onCard: wholeOf(onCard), correct: right, affectsStrokes })
  if (ruling.code === 'disqualified') return disqualified(rule)
  const { netOff } = ruling
  const text = say('propose-net-off', { n: netOff < 0 ? `+${-netOff}` : netOff })
  return netOff === right ? noPenalty(text, rule) : { text, draft: { kind: 'net-off', strokes: String(netOff), rule } }
}

function onMatchHandicap({ declared, correct, affectsStrokes, isInTime }: Seen): Proposal | null {
  const [told, right] = [wholeOf(declared), wholeOf(correct)]
  if (told === null || right === null) return null
  const rule = 'Rules of Golf 3.2c(1)'
  const ruling = ruleOnMatchHandicap({ declared: told, correct: right, affectsStrokes, isCorrectedInTime: isInTime })
  if (ruling.code === 'disqualified') return disqualified(rule)
  const { playsOff } = ruling
  return {
    text: say('propose-plays-off', { n: playsOff }),
    draft: { kind: playsOff === right ? 'no-penalty' : 'plays-off', strokes: String(playsOff), rule },
  }
}

function onCertification({ hasLocalRule }: Seen): Proposal {
  const rule = hasLocalRule ? 'Model Local Rule L-1' : 'Rules of Golf 3.3b(2)'
  const ruling = ruleOnMissingCertification(hasLocalRule)
  if (ruling.code === 'disqualified') return disqualified(rule)
  return { text: say('propose-two-last'), draft: { kind: 'penalty', strokes: String(ruling.strokes), rule } }
}

function onStart({ minutes, form }: Seen): Proposal | null {
  const late = wholeOf(minutes)
  if (late === null) return null
  const rule = 'Rules of Golf 5.3a'
  const ruling = ruleOnStartTime(late, form)
  if (ruling.code === 'no-penalty') return noPenalty(say('propose-no-penalty'), rule)
  if (ruling.code === 'disqualified') return disqualified(rule)
  const penalty = { kind: 'penalty', strokes: '2', rule } as const
  switch (ruling.penalty.unit) {
    case 'strokes':
      return { text: say('propose-two-first'), draft: penalty }
    case 'points':
      return { text: say('propose-points'), draft: { ...penalty, hole: '' } }
    case 'holes':
      return { text: say('propose-holes'), draft: { ...penalty, hole: '', strokes: '1' } }
    case 'hole-lost':
      return { text: say('propose-hole-lost'), draft: { ...penalty, strokes: '0', isHoleLost: true } }
  }
}

function onUnfinished({ form }: Seen): Proposal {
  const rule = 'Rules of Golf 23.2'
  const ruling = ruleOnUnfinishedSide(form === 'match' ? 'match' : 'stroke-play')
  if (ruling === 'loses-hole') return noPenalty(say('propose-loses-hole'), rule)
  return { ...disqualified(rule), text: say('propose-unless-corrected') }
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
  return { ...disqualified(rule), text: say('propose-both-disqualified') }
}

function onWrittenSum({ ball, written }: Seen, { gross }: Known): Proposal | null {
  const sum = wholeOf(written)
  if (ball === '' || gross === null || sum === null) return null
  const { counts } = ruleOnWrittenSum(gross)
  const text = say(sum === counts ? 'propose-sum-right' : 'propose-sum', { n: counts })
  const reason = say('propose-sum-reason', { written: sum, n: counts })
  return { text, draft: { kind: 'no-penalty', ball, rule: 'Rules of Golf 3.3b(4)', reason } }
}
