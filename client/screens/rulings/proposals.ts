import { type cardHandicapDuties, ruleOnCardHandicap } from '#core/card/rulings/card-handicap.ts'
import type { lowScoreReasons } from '#core/card/rulings/hole-score.ts'
import { ruleOnMissingCertification } from '#core/card/rulings/missing-certification.ts'
import { ruleOnMatchHandicap } from '#core/formats/rulings/match-handicap.ts'
import { ruleOnReturnedHole } from '#core/formats/rulings/returned-score.ts'
import { ruleOnStartTime, type startForms } from '#core/formats/rulings/start-time.ts'
import { ruleOnUnfinishedSide } from '#core/formats/rulings/unfinished-side.ts'
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
}

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
}

/** What the Rules say, in words, and what it would be as a ruling. */
export interface Proposal {
  readonly text: string
  readonly draft: Partial<RulingDraft>
}

/** Null while a figure is missing. */
export function proposalOf(situation: Situation, seen: Seen): Proposal | null {
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
  return ruling.code === 'disqualified'
    ? disqualified(rule)
    : noPenalty(say('propose-net-off', { n: ruling.netOff }), rule)
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
