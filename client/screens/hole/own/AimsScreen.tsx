import { useState } from 'react'
import { Redirect, useLocation } from 'wouter'
import type { Outing } from '#core/outing/outing.ts'
import type { LevelCard, Three } from '#core/outing/results.ts'
import type { LogId } from '#core/values/ids.ts'
import { Field } from '../../../parts/Field.tsx'
import { threeWords } from '../../../parts/strip-view.ts'
import { formatHoles } from '../../../words/figures.ts'
import { say } from '../../../words/say-any.ts'
import { OutingPage } from '../../outing/OutingPage.tsx'
import { tabPath } from '../../paths.ts'
import { isWritten } from '../hole-view.ts'
import { useGroupShown } from '../use-group-shown.ts'
import { WhichIsMine } from '../WhichIsMine.tsx'
import { longestCue, proposedTargets, targetRange, withTarget } from './aims.ts'
import { useAims } from './use-aims.ts'

/** The targets of the six threes, set before the first tee, and the player's cue; on this phone alone. */
export function AimsScreen() {
  const { outing, levels, log, group, whose, setWhose } = useGroupShown()
  if (!outing || !levels || !log || !group) return null
  const level = whose.ball && group.balls.includes(whose.ball) ? levels.cards.get(whose.ball) : undefined
  return (
    <OutingPage tab="hole">
      <div className="stack">
        <h1>{say('aims-title')}</h1>
        <p>{say('aims-what')}</p>
        <p className="quiet">{say('aims-private')}</p>
        <WhichIsMine whose={whose} outing={outing} group={group} onWhose={setWhose} />
        {level && <AimsOfBall key={level.ball} log={log} outing={outing} level={level} />}
      </div>
    </OutingPage>
  )
}

interface Props {
  readonly log: LogId
  readonly outing: Outing
  readonly level: LevelCard
}

/** What is typed stands at once: a phone that goes into the pocket has kept it. */
function AimsOfBall({ log, outing, level }: Props) {
  const [kept, keep] = useAims(log, level.ball)
  const [, go] = useLocation()
  const [isDone, setDone] = useState(false)
  const proposed = { targets: proposedTargets(level), cue: '' }
  // The length of the round may have changed since.
  const aims = kept && kept.targets.length === proposed.targets.length ? kept : proposed
  if (isDone) return <Redirect to={tabPath(log, 'hole')} />
  return (
    <>
      <ol className="lines private">
        {level.threes.map((three, place) => (
          <TargetLine
            key={three.number}
            three={three}
            target={aims.targets[place] ?? three.level}
            isFixed={three.holes.some(key => isWritten(outing, level.ball, key))}
            onTarget={strokes => keep(withTarget(aims, place, strokes))}
          />
        ))}
      </ol>
      <Field
        label={say('aims-cue')}
        hint={say('aims-cue-hint')}
        value={aims.cue}
        maxLength={longestCue}
        onValue={cue => keep({ ...aims, cue })}
      />
      <button
        type="button"
        className="button loud"
        onClick={() => {
          keep(aims)
          setDone(true)
          go(tabPath(log, 'hole'))
        }}
      >
        {say('aims-done')}
      </button>
    </>
  )
}

interface LineProps {
  readonly three: Three
  readonly target: number
  /** True once the three has begun. */
  readonly isFixed: boolean
  readonly onTarget: (strokes: number) => void
}

function TargetLine({ three, target, isFixed, onTarget }: LineProps) {
  const { number, holes, par, level } = three
  const title = threeWords(number)
  return (
    <li className="target-line">
      <span className="target-what">
        <b>{say('aims-title-of', { three: title, holes: formatHoles(holes.map(key => Number(key.split('/')[0]))) })}</b>
        <span className="quiet">{say('aims-three', { par, level })}</span>
      </span>
      {isFixed ? (
        <span className="target-fixed">
          <b>{target}</b> <span className="quiet">{say('aims-fixed')}</span>
        </span>
      ) : (
        <fieldset className="stepper">
          <legend className="hidden">{say('aims-target-of', { three: title })}</legend>
          <button
            type="button"
            className="button"
            aria-label={say('aims-less', { three: title })}
            disabled={target <= targetRange.min}
            onClick={() => onTarget(target - 1)}
          >
            −
          </button>
          <output aria-label={say('aims-target-of', { three: title })}>{target}</output>
          <button
            type="button"
            className="button"
            aria-label={say('aims-more', { three: title })}
            disabled={target >= targetRange.max}
            onClick={() => onTarget(target + 1)}
          >
            +
          </button>
        </fieldset>
      )}
    </li>
  )
}
