import { useLocation } from 'wouter'
import { useAnswer } from '../../parts/use-answer.ts'
import { listOutings } from '../../state/actions.ts'
import { readOuting } from '../../state/kept-outings.ts'
import { formatList } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { paths } from '../paths.ts'
import type { Draft } from '../start/draft.ts'
import { gamesChosen, nameOf } from '../start/draft-balls.ts'
import { draftOfOuting } from '../start/draft-of-outing.ts'
import { keepDraft } from '../start/use-draft.ts'

/** So many games are offered; further ones are in the list of outings. */
const mostOffered = 2
/** No more outings than these are read to find them. */
const mostRead = 6

/** Last week's game again, everything filled in by one tap. */
export function PlayAgain() {
  const games = useAnswer(lastGames)
  const [, go] = useLocation()
  const again = (draft: Draft): void => {
    keepDraft(draft)
    go(paths.start)
  }
  return games?.map(draft => (
    <button key={draft.courseFrom} type="button" className="button loud again" onClick={() => again(draft)}>
      <span>{say('home-again', { course: draft.courseName || say('home-untitled') })}</span>
      <span className="again-who">{formatList(draft.players.map(({ id }) => nameOf(draft.players, id)))}</span>
      <span className="again-what">{formatList(gamesChosen(draft).map(format => say(format)))}</span>
    </button>
  ))
}

/** The newest games on this phone that differ. */
async function lastGames(): Promise<readonly Draft[]> {
  const found: Draft[] = []
  for (const { log } of (await listOutings()).slice(0, mostRead)) {
    const kept = await readOuting(log)
    const draft = kept?.isIn && draftOfOuting(kept.outing, log, kept.label)
    if (draft && !found.some(other => isSame(other, draft))) found.push(draft)
    if (found.length === mostOffered) break
  }
  return found
}

/** The same people on the same course with the same games; a figure may have changed since. */
const isSame = (one: Draft, other: Draft): boolean => wordsOf(one) === wordsOf(other)

const wordsOf = (draft: Draft): string =>
  JSON.stringify([draft.courseName, draft.players.map(({ name }) => name).sort(), gamesChosen(draft)])
