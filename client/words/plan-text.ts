import type { Approach } from '#core/plan/approach.ts'
import type { BagClub } from '#core/plan/bag.ts'
import type { Club } from '#core/plan/clubs.ts'
import type { HolePlan } from '#core/plan/hole-plan.ts'
import type { LayUp } from '#core/plan/lay-up.ts'
import type { Plan } from '#core/plan/plan.ts'
import { recoverySteps } from '#core/plan/recovery.ts'
import type { Swing } from '#core/plan/swing.ts'
import { say } from './say-any.ts'

type LaidUp = Extract<LayUp, { kind: 'to-favourite' }>

/** "7 iron (145)", "5 iron (about 166, estimated)". */
export const clubText = ({ club, carry, isEstimated, part }: BagClub): string =>
  say(isEstimated ? 'club-estimated' : 'club-said', { club: swingName({ club, ...(part && { part }) }), n: carry })

/** A club, or a part swing of it by its name. */
export const swingName = ({ club, part }: Pick<BagClub, 'club' | 'part'>): string =>
  part === undefined ? clubName(club) : say(`club-part-${part}`, { club: clubName(club) })

export const clubName = (club: Club): string => say(`club-${club}`)

export const swingText = ({ club, hold }: Swing): string => say(`swing-${hold}`, { club: clubText(club) })

/** What the closed line says of a hole; null where there is nothing to say of it. */
export function lineOfHole(found: HolePlan): string | null {
  switch (found.kind) {
    case 'few-clubs':
      return null
    case 'lay-up':
      return lineOfLayUp(found.layUp) ?? say('plan-line-out', { left: found.left })
    case 'green': {
      if (found.tee) return say('plan-line-tee', { club: swingName(found.tee), left: found.left })
      const { aim, swing, plays } = found.approach
      return swing && say('plan-line-green', { club: swingName(swing.club), aim: aimText(aim, plays) })
    }
  }
}

const aimText = (aim: Approach['aim'], plays: number): string =>
  aim === 'middle' ? say('plan-line-middle') : String(plays)

function lineOfLayUp(layUp: LayUp | null): string | null {
  if (layUp?.kind === 'to-favourite') {
    return say('plan-line-lay-up', { shot: layUp.shot, leaves: layUp.favourite })
  }
  if (layUp?.kind !== 'as-far-as-it-goes') return null
  return say('plan-line-far', { club: swingName(layUp.club), leaves: layUp.leaves })
}

/** What the plan says of a hole, in whole sentences. */
export function sentencesOfHole(found: HolePlan): readonly string[] {
  switch (found.kind) {
    case 'few-clubs':
      return [say('plan-few-clubs')]
    case 'lay-up':
      return [notReached(found), ...(found.layUp ? sentencesOfLayUp(found.layUp) : []), say('plan-by-carry')]
    case 'green':
      return [
        ...reached(found),
        ...(found.approach.aim === 'middle' ? [say('plan-reached-middle')] : []),
        say('plan-by-carry'),
      ]
  }
}

const notReached = ({ tee, left }: Extract<HolePlan, { kind: 'lay-up' }>): string =>
  tee ? say('plan-not-reached', { tee: clubText(tee), left }) : say('plan-not-reached-first', { left })

function reached({ tee, left, approach: { swing } }: Extract<HolePlan, { kind: 'green' }>): readonly string[] {
  if (!swing) return []
  const club = clubText(swing.club)
  return [tee ? say('plan-reached', { tee: clubText(tee), left, club }) : say('plan-reached-first', { club })]
}

/** The shot that a lay-up asks for, its club, and what it leaves. */
export function sentencesOfLayUp(layUp: LayUp): readonly string[] {
  switch (layUp.kind) {
    case 'no-number':
      return [say('lay-up-no-number')]
    case 'inside':
      return [say('lay-up-inside')]
    case 'as-far-as-it-goes':
      return [say('lay-up-far', { club: clubText(layUp.club), leaves: layUp.leaves })]
    case 'to-favourite': {
      const shot = say('lay-up-shot-line', { shot: layUp.shot, leaves: layUp.favourite })
      return layUp.swing ? [shot, swingOfLayUp(layUp.swing, layUp)] : [shot]
    }
  }
}

/** The club for a lay-up, and what it leaves where that is another number. */
export const swingOfLayUp = (swing: Swing, { leaves, favourite }: Pick<LaidUp, 'leaves' | 'favourite'>): string =>
  leaves === favourite ? swingText(swing) : say('lay-up-nearest', { swing: swingText(swing), leaves })

/** The routine from the trees, word after word. */
export const recoveryText = (): string => recoverySteps.map(step => say(`trees-${step}`)).join(' ')

/** The habits that are on, as general notes with the player's own numbers. */
export function notesOfHabits({ habits, numbers, favourite }: Plan): readonly string[] {
  const notes = [
    habits.middle && say('note-middle', { n: numbers['mid-iron-border'] }),
    habits['pin-depth'] &&
      say('note-pin-depth', { past: numbers['past-front-pin'], short: numbers['short-of-back-pin'] }),
    habits['lay-up'] && (favourite === null ? say('note-lay-up-none') : say('note-lay-up', { n: favourite })),
    habits.trees && say('note-trees', { steps: recoveryText() }),
    habits['six-threes'] && say('note-six-threes'),
  ].filter(note => note !== false)
  return notes.length === 0 ? [say('note-none')] : notes
}
