import { needsHandicaps } from '#core/formats/game-gaps.ts'
import { formatTable } from '#core/formats/table.ts'
import { parseIndexTenths, parseTenths } from '#core/outing/tenths.ts'
import { unreadable } from '#shared/atoms.ts'
import { limits } from '#shared/limits.ts'
import { say } from '../../words/say-any.ts'
import { holesWords } from '../card/card-view.ts'
import { type FieldFault, faultOfNumber, faultsOfGame } from '../games/game-faults.ts'
import { type Draft, holesInPlay, type PlayerDraft, type TeeDraft } from './draft.ts'
import { ballsOfDraft, gamesChosen, namesOf } from './draft-balls.ts'
import { hasRatings, lengthTexts } from './tee-draft.ts'

/** Every field at fault, in the order of the page; empty when the outing can start. */
export function faultsOfDraft(draft: Draft): readonly FieldFault[] {
  return [
    ...faultsOfCourse(draft),
    ...draft.players.flatMap((player, place) => faultsOfPlayer(draft, player, place)),
    ...faultsOfGames(draft),
    ...faultOfText('title', say('start-name'), draft.title, limits.titleLength, false),
  ]
}

/** What is at fault in the course and its tees. */
export const faultsOfCourse = (draft: Draft): readonly FieldFault[] => [
  ...faultOfText('courseName', say('start-course-name'), draft.courseName, limits.titleLength, true),
  ...faultsOfHoles(draft),
  ...draft.tees.flatMap((tee, place) => faultsOfTee(draft, tee, place)),
]

function faultOfText(field: string, name: string, text: string, length: number, isNeeded: boolean): FieldFault[] {
  const trimmed = text.trim()
  if (trimmed === '') return isNeeded ? [{ field, text: say('fault-missing', { field: name }) }] : []
  if (trimmed.length > length) return [{ field, text: say('fault-long', { field: name, n: length }) }]
  return unreadable.test(trimmed) ? [{ field, text: say('fault-text', { field: name }) }] : []
}

/** One sentence names every hole whose stroke index is missing or out of range. */
function faultsOfHoles(draft: Draft): FieldFault[] {
  const wrong = holesInPlay(draft).flatMap(({ index }, place) =>
    faultOfNumber('', '', index, 1, 18).length > 0 ? [place + 1] : [],
  )
  const text = say('fault-holes', { holes: holesWords(wrong) })
  return wrong.map(hole => ({ field: `hole-${hole}`, text }))
}

/** Ratings may wait until somebody plays off a Handicap Index from here. */
export function faultsOfTee(draft: Draft, tee: TeeDraft, place: number): FieldFault[] {
  const n = place + 1
  const name = faultOfText(`${tee.id}-name`, say('start-tee-name', { n }), tee.name, limits.nameLength, true)
  const isPlayed = draft.players.some(({ kind, figure, tee: of }) => kind === 'index' && figure !== '' && of === tee.id)
  const rated = hasRatings(tee) || isPlayed ? faultsOfRatings(tee, n) : []
  return [...name, ...rated, ...faultsOfLengths(draft, tee, n)]
}

function faultsOfLengths(draft: Draft, tee: TeeDraft, n: number): FieldFault[] {
  const texts = lengthTexts(tee, draft.length)
  if (texts.every(text => text === '')) return []
  const wrong = texts.flatMap((text, hole) => (faultOfNumber('', '', text, 1, 900).length > 0 ? [hole + 1] : []))
  const text = say('fault-lengths', { n, holes: holesWords(wrong) })
  return wrong.length === 0 ? [] : [{ field: `${tee.id}-lengths`, text }]
}

function faultsOfRatings(tee: TeeDraft, n: number): FieldFault[] {
  const rating = parseTenths(tee.courseRating.trim())
  const isRating = rating !== null && rating >= 200 && rating <= 900
  const name = say('start-tee-rating', { n })
  return [
    ...(isRating
      ? []
      : [{ field: `${tee.id}-rating`, text: say('fault-number', { field: name, low: '20.0', high: '90.0' }) }]),
    ...faultOfNumber(`${tee.id}-slope`, say('start-tee-slope', { n }), tee.slope, 55, 155),
    ...faultOfNumber(`${tee.id}-par`, say('start-tee-par', { n }), tee.par, 27, 90),
  ]
}

/** Of two players with one name the second is the one to be changed. */
const isSecond = ({ players }: Draft, player: PlayerDraft, place: number): boolean =>
  players.findIndex(({ name }) => name.trim() === player.name.trim()) < place

/** Name, figure and tee of one player. */
export function faultsOfPlayer(
  draft: Draft,
  player: PlayerDraft,
  place: number,
  isTwin = isSecond(draft, player, place),
): FieldFault[] {
  const n = place + 1
  const field = say('start-player-name', { n })
  const twin =
    isTwin && player.name.trim() !== '' ? [{ field: `${player.id}-name`, text: say('fault-twice', { field }) }] : []
  return [
    ...faultOfText(`${player.id}-name`, field, player.name, limits.nameLength, true),
    ...twin,
    ...faultsOfHandicap(draft, player, n),
  ]
}

/** A handicap may stay empty where no game needs one. */
function faultsOfHandicap(draft: Draft, player: PlayerDraft, n: number): FieldFault[] {
  const at = `${player.id}-figure`
  const field = say(`start-player-${player.kind}`, { n })
  if (player.figure.trim() === '') {
    return hasHandicapGame(draft) ? [{ field: at, text: say('fault-missing', { field }) }] : []
  }
  if (player.kind !== 'index')
    return faultOfNumber(at, field, player.figure, -limits.handicapStrokes, limits.handicapStrokes)
  const tenths = parseIndexTenths(player.figure.trim())
  const figure =
    tenths === null || tenths > 540 || tenths < -100 ? [{ field: at, text: say('fault-handicap', { field }) }] : []
  const tee = draft.tees.some(({ id }) => id === player.tee)
    ? []
    : [{ field: `${player.id}-tee`, text: say('fault-tee', { field: say('start-player-tee', { n }) }) }]
  return [...figure, ...tee]
}

const hasHandicapGame = (draft: Draft): boolean =>
  gamesChosen(draft).some(format => needsHandicaps(formatTable[format], draft.games[format].methods))

function faultsOfGames(draft: Draft): FieldFault[] {
  const chosen = gamesChosen(draft)
  if (chosen.length === 0) return [{ field: 'games', text: say('fault-no-game') }]
  const balls = namesOf(draft, ballsOfDraft(draft))
  return chosen.flatMap(format => faultsOfGame(format, draft.games[format], balls, draft.ballPlayers))
}
