import { recordOf } from '#core/card/card.ts'
import { holeKey, type PlayedHole } from '#core/card/score.ts'
import type { Levels } from '#core/outing/levels.ts'
import type { Ball, Group, Outing } from '#core/outing/outing.ts'
import { ballsInTurn, teeShotOf } from '#core/outing/tee-shot.ts'
import type { BallId, LogId } from '#core/values/ids.ts'
import { LockButton } from '../../parts/LockButton.tsx'
import { fetchSoon, lazyPart, useFetched } from '../../parts/later.tsx'
import { ScreenOn } from '../../parts/ScreenOn.tsx'
import { Strip } from '../../parts/Strip.tsx'
import { stripOf, stripWords } from '../../parts/strip-view.ts'
import { isCardLog } from '../../state/card-taken.ts'
import { mayScore } from '../../state/outing-store.ts'
import { usePlan } from '../../state/plan-store.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say.ts'
import { OutingPage } from '../outing/OutingPage.tsx'
import { BallRow } from './BallRow.tsx'
import { HeldScores } from './HeldScores.tsx'
import { HoleHead } from './HoleHead.tsx'
import { holeInPlay, isAllIn, isBehind, isCurrentFor } from './hole-in-play.ts'
import { holesOf, threeJustClosed } from './hole-view.ts'
import { More } from './More.tsx'
import { News } from './News.tsx'
import { OtherBalls } from './OtherBalls.tsx'
import { OtherStands } from './OtherStands.tsx'
import type { Tap } from './score-guard.ts'
import { Turn } from './Turn.tsx'
import { UndoScore } from './UndoScore.tsx'
import { useScoreGuard } from './use-score-guard.ts'
import { WhoseChoice } from './WhoseChoice.tsx'
import { isForOthersToo, useWhose, type Whose } from './whose-scores.ts'
import { writeScore } from './write-score.ts'

const FirstTeeShots = lazyPart(async () => (await import('./more/FirstTeeShots.tsx')).FirstTeeShots)
const OwnLine = lazyPart(async () => (await import('./own/OwnLine.tsx')).OwnLine, {
  standIn: <div className="private-line" />,
})
const SkinsAtEnd = lazyPart(async () => (await import('./more/SkinsAtEnd.tsx')).SkinsAtEnd)
const TieAtEnd = lazyPart(async () => (await import('./more/TieAtEnd.tsx')).TieAtEnd)
const LevelAtEnd = lazyPart(async () => (await import('./more/LevelAtEnd.tsx')).LevelAtEnd)

// Cards and levels are enough to score a hole; what the games come to is on its way when the page begins.
const standingsOnHole = fetchSoon(async () => (await import('./standings.ts')).standingsOnHole)

interface Props {
  readonly log: LogId
  readonly outing: Outing
  readonly levels: Levels
  readonly group: Group
  readonly at: PlayedHole
}

/** One hole: the strip on top, a row a player, the next hole at the bottom. */
export function HolePage({ log, outing, levels, group, at }: Props) {
  const me = useOuting(store => store.me)
  const hasThrees = usePlan(store => store.plan?.habits['six-threes'] ?? true)
  const [whose, setWhose] = useWhose(log, outing, me)
  const scored = ballsScored(group, whose)
  const shown = whose.ball ?? group.balls[0]
  const canScore = mayScore(me)
  const standings = useFetched(standingsOnHole)?.(outing, levels, group, scored, at) ?? null
  const inTurn = ballsInTurn(outing).filter(({ id }) => group.balls.includes(id))
  const { guard, put, answer } = useScoreGuard(
    tap => isCurrentFor(outing, group, tap.ball, tap) || (tap.ball === whose.marks && lacksMarker(outing, tap)),
    tap => writeScore(outing, tap, tap.ball === whose.marks),
  )
  const turn =
    guard.reason !== null ? (
      <HeldScores
        guard={guard}
        outing={outing}
        inPlay={isAllIn(outing, group) ? null : (holeInPlay(outing, group)?.hole ?? null)}
        onAnswer={answer}
      />
    ) : (
      <Turn
        log={log}
        holes={holesOf(group)}
        at={at}
        closedThree={hasThrees ? threeJustClosed(outing, levels, scored, at) : null}
        isBehind={isBehind(outing, group, scored, at)}
        isOver={isAllIn(outing, group)}
      >
        {canScore && <UndoScore at={at} />}
        {canScore && <LockButton />}
      </Turn>
    )
  return (
    <OutingPage tab="hole" above={turn}>
      {shown && <StripOnTop outing={outing} levels={levels} ball={shown} at={at} />}
      <HoleHead
        outing={outing}
        at={at}
        match={standings?.head ?? null}
        player={outing.players.get(outing.balls.get(shown ?? ('' as BallId))?.players[0] ?? ('' as never)) ?? null}
      />
      {scored.map(ball => (
        <BallRow
          key={`${ball} ${holeKey(at)}`}
          outing={outing}
          levels={levels}
          ball={ball}
          at={at}
          isYou={ball === whose.ball}
          teesOff={teeShotWords(outing, inTurn, ball, at)}
          hasHonour={standings?.honour.includes(ball) ?? false}
          isMarked={ball === whose.marks}
          canScore={canScore}
          onScore={score => put({ ball, ...at, score })}
        />
      ))}
      {canScore && inTurn.length > 0 && <FirstTeeShots outing={outing} group={group} at={at} balls={inTurn} />}
      {canScore && standings?.pickUp && <p className="hint">{standings.pickUp}</p>}
      <OtherBalls outing={outing} balls={group.balls.filter(ball => !scored.includes(ball))} at={at} />
      <OtherStands stands={standings?.others ?? []} />
      {canScore && (
        <OwnLine log={log} outing={outing} ball={whose.ball} at={at} isShut={isForOthersToo(whose, group)} />
      )}
      <News />
      {!canScore && !isCardLog(log) && (
        <p className="notice">{say(me?.role === 'viewer' ? 'share-viewing' : 'hole-not-let-in')}</p>
      )}
      {canScore && standings?.level && <LevelAtEnd log={log} outing={outing} group={group} level={standings.level} />}
      {canScore && standings?.tied && <TieAtEnd log={log} outing={outing} group={group} tied={standings.tied} />}
      {canScore && standings?.left && <SkinsAtEnd log={log} outing={outing} group={group} left={standings.left} />}
      {canScore && <More outing={outing} group={group} at={at} />}
      {canScore && <WhoseChoice whose={whose} outing={outing} group={group} onWhose={setWhose} />}
      <ScreenOn />
    </OutingPage>
  )
}

/** Whose tee shot it is, of partners who play one ball in turn; empty where nobody has said so. */
function teeShotWords(outing: Outing, inTurn: readonly Ball[], id: BallId, at: PlayedHole): string {
  const ball = inTurn.find(each => each.id === id)
  const player = ball ? teeShotOf(outing, ball, at) : null
  return player === null ? '' : say('tees-off', { player: outing.players.get(player)?.name ?? player })
}

/** A marker may write a hole long after the card. */
function lacksMarker(outing: Outing, tap: Tap): boolean {
  const found = outing.cards.get(tap.ball)?.scores.get(holeKey(tap))
  return !found || found.kind === 'none' || !found.entries.some(entry => recordOf(entry) === 'marker')
}

function ballsScored(group: Group, whose: Whose): readonly BallId[] {
  if (whose.mode === 'all' || whose.ball === null || !group.balls.includes(whose.ball)) return group.balls
  return [whose.ball]
}

interface StripProps {
  readonly outing: Outing
  readonly levels: Levels
  readonly ball: BallId
  readonly at: PlayedHole
}

function StripOnTop({ outing, levels, ball, at }: StripProps) {
  const level = levels.cards.get(ball)
  if (!level) return null
  const name = outing.balls.get(ball)?.name ?? ball
  return <Strip blocks={stripOf(outing, level, holeKey(at))} label={stripWords(name, level)} hasSums />
}
