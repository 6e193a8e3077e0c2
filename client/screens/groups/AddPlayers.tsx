import { useState } from 'react'
import { canThrow, gamesForAll } from '#core/outing/acts-roll-up.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { GameId } from '#core/values/ids.ts'
import { createId, thrownUp } from '../../device/random-ids.ts'
import { Select } from '../../parts/Select.tsx'
import { Tick } from '../../parts/Tick.tsx'
import { underHeading } from '../../parts/under-heading.ts'
import { useWork } from '../../parts/use-work.ts'
import { act } from '../../state/actions.ts'
import { groupsPlaying } from '../../state/own-group.ts'
import { say } from '../../words/say-any.ts'
import { gameTitle } from '../board/board-view.ts'
import { draftToMend, faultsOfMending } from '../mend/mend-view.ts'
import type { PlayerDraft } from '../start/draft.ts'
import { PasteNames } from '../start/PasteNames.tsx'
import { comingFacts, startHoleOf, type Target } from './roll-up-acts.ts'

/** People who still come: thrown with everybody, in a new group, or with a group that stands. */
export function AddPlayers({ outing }: { readonly outing: Outing }) {
  const targets = targetsOf(outing)
  const games = gamesForAll(outing)
  const [chosen, setChosen] = useState<Target | null>(null)
  const [left, setLeft] = useState<readonly GameId[]>([])
  const [startHole, setStartHole] = useState(() => startHoleOf(outing))
  const [faults, setFaults] = useState<readonly string[]>([])
  const { isWorking, work } = useWork()
  const target = targets.find(({ value }) => value === chosen)?.value ?? targets[0]?.value ?? 'new'
  const add = (players: readonly Omit<PlayerDraft, 'id'>[]): boolean => {
    const found = faultsOfComers(outing, players)
    setFaults(found)
    if (found.length > 0) return false
    const into = games.map(({ id }) => id).filter(id => !left.includes(id))
    const facts = comingFacts(outing, { players, target, games: into, startHole }, { createId, thrown: thrownUp })
    work(() => act('players added', facts))
    return true
  }
  return (
    <section className="section" aria-label={say('groups-add-title')}>
      <h2>{say('groups-add-title')}</h2>
      <Select label={say('groups-to')} value={target} options={targets} onValue={value => setChosen(value as Target)} />
      {(target === 'thrown' || target === 'new') && (
        <Select
          label={say('start-hole')}
          value={String(startHole)}
          options={[...outing.holes.keys()].map(hole => ({ value: String(hole), text: String(hole) }))}
          onValue={value => setStartHole(Number(value))}
        />
      )}
      {games.length > 0 && (
        <fieldset>
          <legend>{say('groups-for-all')}</legend>
          {games.map(({ id, format }) => (
            <Tick
              key={id}
              label={gameTitle(format)}
              isOn={!left.includes(id)}
              onChange={isOn => setLeft(isOn ? left.filter(each => each !== id) : [...left, id])}
            />
          ))}
        </fieldset>
      )}
      <div role="alert">
        {faults.length > 0 && (
          <ul className="notice">
            {faults.map(text => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        )}
      </div>
      <PasteNames tees={[...outing.tees].map(([id, { name }]) => ({ id, name }))} isWorking={isWorking} onAdd={add} />
    </section>
  )
}

function targetsOf(outing: Outing): readonly { readonly value: Target; readonly text: string }[] {
  return [
    ...(canThrow(outing) ? [{ value: 'thrown' as const, text: say('groups-to-thrown') }] : []),
    { value: 'new', text: say('groups-to-new') },
    ...groupsPlaying(outing).map(({ id, name }) => ({ value: id, text: say('groups-to-group', { group: name }) })),
  ]
}

/** One sentence for each line that cannot come, by its number. */
function faultsOfComers(outing: Outing, comers: readonly Omit<PlayerDraft, 'id'>[]): readonly string[] {
  const draft = draftToMend(outing)
  const added = comers.map((each, place): PlayerDraft => ({ ...each, id: `new-${place + 1}` }))
  const all = { ...draft, players: [...draft.players, ...added] }
  return added.flatMap((player, place) => {
    // Of two with one name the second is the one to be changed.
    const sofar = { ...all, players: all.players.slice(0, draft.players.length + place + 1) }
    const [first] = faultsOfMending(sofar, player)
    // The line has a number of its own.
    const heading = say('start-player-n', { n: draft.players.length + place + 1 })
    if (!first) return []
    return [say('groups-fault', { n: place + 1, name: player.name, fault: underHeading(heading, first.text) })]
  })
}
