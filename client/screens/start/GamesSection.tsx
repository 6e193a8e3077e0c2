import { useState } from 'react'
import type { FormatName } from '#core/formats/format-names.ts'
import { Choice } from '../../parts/Choice.tsx'
import { say } from '../../words/say-any.ts'
import { FormatList } from '../games/FormatList.tsx'
import { GameFields } from '../games/GameFields.tsx'
import { sidesOfDraft } from '../games/game-acts.ts'
import type { GameDraft } from '../games/game-draft.ts'
import { sidesWords, textOfParts, wordsOfSides } from '../games/sides.ts'
import { ballsOfDraft, gamesChosen, namesOf, partnersOfDraft, waysToPartner } from './draft-balls.ts'
import { Filled } from './Filled.tsx'
import { Suggestions } from './Suggestions.tsx'
import type { SectionProps } from './section.ts'

/** The games, any number at once, each with its allowance in sight; those chosen come first. */
export function GamesSection({ draft, change, faultAt }: SectionProps) {
  const changeGame = (format: FormatName, changed: Partial<GameDraft>): void =>
    change({ games: { ...draft.games, [format]: { ...draft.games[format], ...changed } } })
  const [atFirst] = useState(() => gamesChosen(draft))
  const none = faultAt('games')
  const balls = namesOf(draft, ballsOfDraft(draft))
  const sidesInWords = (format: FormatName): string =>
    wordsOfSides(format, balls, sidesOfDraft(format, draft.games[format], balls))
  const hasFaultOf = (format: FormatName): boolean =>
    ['', '-allowance', '-shares', '-counting', '-maximum'].some(field => faultAt(format + field) !== undefined)
  return (
    <section className="section" aria-label={say('games-title')}>
      <h2>{say('games-title')}</h2>
      <WhatIsPlayed draft={draft} change={change} />
      <Suggestions draft={draft} change={change} />
      {none && <p className="fault">{none}</p>}
      {gamesChosen(draft).map(format => (
        <section key={format} className="group-box" aria-label={say(format)}>
          <h3>{say(format)}</h3>
          <Filled
            isTaken={draft.courseFrom !== '' && atFirst.includes(format)}
            title={sidesInWords(format)}
            words={allowanceWords(draft.games[format])}
            hasFault={hasFaultOf(format)}
          >
            <GameFields
              format={format}
              game={draft.games[format]}
              balls={balls}
              ballPlayers={draft.ballPlayers}
              faultAt={faultAt}
              onChange={changed => changeGame(format, changed)}
            />
          </Filled>
        </section>
      ))}
      <h3>{say('games-add')}</h3>
      <FormatList
        balls={balls}
        ballPlayers={draft.ballPlayers}
        isOn={format => draft.games[format].isOn}
        onTick={(format, isOn) => changeGame(format, { isOn })}
      />
    </section>
  )
}

const allowanceWords = ({ methods, allowance }: GameDraft): string =>
  methods.allowancePercent === null ? '' : `${allowance} %`

/** Each their own ball, or several with one: which formats there are hangs on it. */
function WhatIsPlayed({ draft, change }: Pick<SectionProps, 'draft' | 'change'>) {
  const { players, ballPlayers } = draft
  if (players.length < 2) return null
  const sizes = ([1, 2, 3, 4] as const).filter(size => size === 1 || waysToPartner(players, size).length > 0)
  const ways = waysToPartner(players, ballPlayers)
  const names = namesOf(
    draft,
    players.map(({ id }) => ({ id, players: [id] })),
  )
  return (
    <>
      <Choice
        label={say('games-balls')}
        value={String(ballPlayers)}
        options={sizes.map(size => ({ value: String(size), text: say(`games-balls-${size}`) }))}
        onValue={value => change({ ballPlayers: Number(value), partnersChosen: null })}
      />
      {ballPlayers > 1 && <p className="quiet">{say('games-one-ball-hint')}</p>}
      {ballPlayers > 1 && ways.length > 1 && (
        <Choice
          label={say('games-partners')}
          value={textOfParts(partnersOfDraft(draft))}
          options={ways.map(way => ({ value: textOfParts(way), text: sidesWords(names, way) }))}
          onValue={value => change({ partnersChosen: ways.find(way => textOfParts(way) === value) ?? null })}
        />
      )}
    </>
  )
}
