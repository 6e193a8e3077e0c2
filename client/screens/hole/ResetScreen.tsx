import { useLocation } from 'wouter'
import type { HoleKey } from '#core/card/score.ts'
import type { Levels } from '#core/outing/levels.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { Three } from '#core/outing/results.ts'
import type { BallId } from '#core/values/ids.ts'
import { Strip } from '../../parts/Strip.tsx'
import { stripOf, stripWords } from '../../parts/strip-view.ts'
import { useWaking } from '../../parts/use-waking.ts'
import { say } from '../../words/say-any.ts'
import { NowhereScreen } from '../home/NowhereScreen.tsx'
import { OutingPage } from '../outing/OutingPage.tsx'
import { holePath } from '../paths.ts'
import { ClosedLine } from './ClosedLine.tsx'
import { threeOf } from './hole-view.ts'
import { AimsOfThree } from './own/AimsOfThree.tsx'
import { strokesOver } from './strokes-here.ts'
import { Count } from './Ticks.tsx'
import { useGroupShown } from './use-group-shown.ts'

/** Between two threes: the last one closed in a line, the next one opened. */
export function ResetScreen({ three }: { readonly three: number }) {
  const { outing, levels, log, group, whose } = useGroupShown()
  const [, go] = useLocation()
  const first = whose.ball ?? group?.balls[0]
  const level = first && levels?.cards.get(first)
  const next = level?.threes.find(({ number }) => number === three + 1)
  const [start] = next?.holes ?? []
  const [hole = 0, lap = 1] = (start ?? '').split('/').map(Number)
  const goOn = (): void => {
    if (log && start) go(holePath(log, { hole, lap }))
  }
  // It was read before the phone went into the pocket: what comes out is the hole that was played since.
  useWaking(goOn)
  if (!outing || !levels || !log || !group || !first || !level || !next || !start) return <NowhereScreen />
  const balls = whose.mode === 'mine' && whose.ball ? [whose.ball] : group.balls
  const label = stripWords(outing.balls.get(first)?.name ?? first, level)
  const closed = level.threes.find(({ number }) => number === three)
  const onward = (
    <div className="turn">
      <button type="button" className="button loud" onClick={goOn}>
        {say('to-hole', { hole })}
      </button>
    </div>
  )
  return (
    <OutingPage tab="hole" above={onward}>
      <Strip blocks={stripOf(outing, level, start)} label={label} hasSums />
      <ClosedLine outing={outing} levels={levels} balls={balls} three={three} />
      <h1 className="reset-title">
        <b>{next.number}</b> <span>{say('fresh-three')}</span>
      </h1>
      <NextTable outing={outing} levels={levels} own={whose.ball} balls={balls} next={next} />
      {whose.ball && closed && (
        <AimsOfThree log={log} ball={whose.ball} closed={closed} next={next} isShut={balls.length > 1} />
      )}
    </OutingPage>
  )
}

interface ThreeProps {
  readonly outing: Outing
  readonly levels: Levels
  readonly balls: readonly BallId[]
}

interface NextProps extends ThreeProps {
  /** The ball of the phone's owner, whose strokes are told by game. */
  readonly own: BallId | null
  readonly next: Three
}

function NextTable({ outing, levels, own, balls, next }: NextProps) {
  const numbers = next.holes.map(key => Number(key.split('/')[0]))
  return (
    <table className="figures">
      <thead>
        <tr>
          <th scope="row">{say('hole')}</th>
          {numbers.map(hole => (
            <th key={hole} scope="col">
              {hole}
            </th>
          ))}
          <th scope="col">{say('reset-sum')}</th>
        </tr>
      </thead>
      <tbody>
        <tr>
          <th scope="row">{say('par')}</th>
          {numbers.map(hole => (
            <td key={hole} className="light">
              {outing.holes.get(hole)?.par}
            </td>
          ))}
          <td className="light">{next.par}</td>
        </tr>
        {own && <StrokeRows outing={outing} levels={levels} ball={own} holes={next.holes} />}
        {balls.map(ball => (
          <LevelRow key={ball} outing={outing} levels={levels} ball={ball} three={next.number} holes={next.holes} />
        ))}
      </tbody>
    </table>
  )
}

/** The owner's strokes on the next three holes, a row for each game that gives others. */
function StrokeRows({ outing, levels, ball, holes }: Omit<RowProps, 'three'>) {
  return strokesOver(outing, levels.prepared, ball, holes).map(({ words, byHole }) => (
    <tr key={words}>
      <th scope="row">{say('reset-strokes', { words })}</th>
      {holes.map((key, place) => (
        <td key={key}>
          <Count count={byHole[place] ?? 0} />
        </td>
      ))}
      <td />
    </tr>
  ))
}

interface RowProps {
  readonly outing: Outing
  readonly levels: Levels
  readonly ball: BallId
  readonly three: number
  readonly holes: readonly HoleKey[]
}

/** A player's level on each of the next three holes, and the sum that keeps it. */
function LevelRow({ outing, levels, ball, three, holes }: RowProps) {
  const own = levels.cards.get(ball)?.levels
  return (
    <tr>
      <th scope="row">
        {outing.balls.get(ball)?.name ?? ball} <span className="quiet">{say('level')}</span>
      </th>
      {holes.map(key => (
        <td key={key}>{own?.get(key)}</td>
      ))}
      <td>{threeOf(levels, ball, three)?.level}</td>
    </tr>
  )
}
