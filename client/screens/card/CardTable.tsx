import { useEffect, useRef, useState } from 'react'
import { Link } from 'wouter'
import { type HoleKey, holeKey, type PlayedHole } from '#core/card/score.ts'
import type { Group, Outing } from '#core/outing/outing.ts'
import type { Results } from '#core/outing/results.ts'
import type { BallId, LogId } from '#core/values/ids.ts'
import { threeWords } from '../../parts/strip-view.ts'
import { mayScore } from '../../state/outing-store.ts'
import { useOuting } from '../../state/use-outing.ts'
import { formatOver } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { threeOf } from '../hole/hole-view.ts'
import { holePath } from '../paths.ts'
import { BoxKeys } from './BoxKeys.tsx'
import { boxWords, grossOf } from './card-view.ts'

interface Props {
  readonly log: LogId
  readonly outing: Outing
  readonly results: Results
  readonly group: Group
}

/** The card in order of play, three holes and their sum at a time. */
export function CardTable({ log, outing, results, group }: Props) {
  const threes = Array.from({ length: Math.ceil(group.round.length / 3) }, (_, place) => ({
    number: place + 1,
    holes: group.round.slice(place * 3, place * 3 + 3),
  }))
  return (
    <table className="figures card-table">
      <caption className="hidden">{say('hole-by-hole')}</caption>
      <thead>
        <tr>
          <th scope="col" className="card-name">
            {say('hole')}
          </th>
          <th scope="col" className="card-name">
            {say('par')}
          </th>
          {group.balls.map(ball => (
            <th key={ball} scope="col" className="card-name">
              {outing.balls.get(ball)?.name ?? ball}
            </th>
          ))}
        </tr>
      </thead>
      {threes.map(({ number, holes }) => (
        <tbody key={number}>
          {holes.map(at => (
            <HoleRow key={holeKey(at)} log={log} outing={outing} group={group} at={at} />
          ))}
          <SumRow outing={outing} results={results} group={group} number={number} holes={holes} />
        </tbody>
      ))}
      <tfoot>
        <TotalRow outing={outing} group={group} keys={group.round.map(holeKey)} />
      </tfoot>
    </table>
  )
}

interface HoleProps extends Omit<Props, 'results'> {
  readonly at: PlayedHole
}

/** One hole; a tap on a box opens its keys below. */
function HoleRow({ log, outing, group, at }: HoleProps) {
  const canScore = useOuting(({ me }) => mayScore(me))
  const [opened, setOpened] = useState<BallId | null>(null)
  return (
    <>
      <tr>
        <th scope="row">
          <Link href={holePath(log, at)} aria-label={say('hole-n', { hole: at.hole })}>
            {at.hole}
          </Link>
        </th>
        <td className="light">{outing.holes.get(at.hole)?.par}</td>
        {group.balls.map(ball => (
          <td key={ball}>
            {canScore ? (
              <BoxButton
                player={outing.balls.get(ball)?.name ?? ball}
                hole={at.hole}
                words={boxWords(outing, ball, holeKey(at))}
                isOpen={ball === opened}
                onOpen={() => setOpened(ball === opened ? null : ball)}
              />
            ) : (
              boxWords(outing, ball, holeKey(at))
            )}
          </td>
        ))}
      </tr>
      {opened && (
        <tr>
          <td className="box-keys" colSpan={group.balls.length + 2}>
            <BoxKeys key={opened} outing={outing} ball={opened} at={at} onDone={() => setOpened(null)} />
          </td>
        </tr>
      )}
    </>
  )
}

interface BoxProps {
  readonly player: string
  readonly hole: number
  readonly words: string
  readonly isOpen: boolean
  readonly onOpen: () => void
}

function BoxButton({ player, hole, words, isOpen, onOpen }: BoxProps) {
  const box = useRef<HTMLButtonElement>(null)
  const wasOpen = useRef(isOpen)
  useEffect(() => {
    // The keys that were pressed are gone: back to the box.
    if (wasOpen.current && !isOpen && document.activeElement === document.body) box.current?.focus()
    wasOpen.current = isOpen
  }, [isOpen])
  const name = say('card-box', { player, hole, score: words || say('changes-cleared') })
  return (
    <button
      ref={box}
      type="button"
      className={/^\d*$/.test(words) ? 'box' : 'box words'}
      aria-expanded={isOpen}
      aria-label={name}
      onClick={onOpen}
    >
      {words}
    </button>
  )
}

interface SumProps extends Omit<Props, 'log'> {
  readonly number: number
  readonly holes: readonly PlayedHole[]
}

/** A three's sum against the level. */
function SumRow({ outing, results, group, number, holes }: SumProps) {
  const par = holes.reduce((sum, { hole }) => sum + (outing.holes.get(hole)?.par ?? 0), 0)
  return (
    <tr className="sum">
      <th scope="row">
        {number}
        <span className="hidden">: {threeWords(number)}</span>
      </th>
      <td className="light">{par}</td>
      {group.balls.map(ball => {
        const over = threeOf(results, ball, number)?.overLevel ?? null
        return <td key={ball}>{over === null ? '' : formatOver(over)}</td>
      })}
    </tr>
  )
}

interface TotalProps extends Pick<Props, 'outing' | 'group'> {
  readonly keys: readonly HoleKey[]
}

function TotalRow({ outing, group, keys }: TotalProps) {
  const par = group.round.reduce((sum, { hole }) => sum + (outing.holes.get(hole)?.par ?? 0), 0)
  return (
    <tr className="sum">
      <th scope="row">{say('card-out')}</th>
      <td className="light">{par}</td>
      {group.balls.map(ball => (
        <td key={ball}>{grossOf(outing, ball, keys) ?? ''}</td>
      ))}
    </tr>
  )
}
