import { useEffect, useRef, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { thrownUp } from '../../device/random-ids.ts'
import { useWork } from '../../parts/use-work.ts'
import { startOuting } from '../../state/starting.ts'
import { say } from '../../words/say-any.ts'
import type { FieldFault } from '../games/game-faults.ts'
import { paths, tabPath } from '../paths.ts'
import { CourseSection } from './CourseSection.tsx'
import { nameOf } from './draft-balls.ts'
import { faultsOfDraft } from './draft-faults.ts'
import { factsOfDraft } from './facts-of-draft.ts'
import { GamesSection } from './GamesSection.tsx'
import { PlayersSection } from './PlayersSection.tsx'
import { RoundSection } from './RoundSection.tsx'
import { StrokesSection } from './StrokesSection.tsx'
import { useDraft } from './use-draft.ts'

/** The day at the course, by this phone's clock: "2026-05-16". */
function today(): string {
  const now = new Date()
  return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10)
}

/** One page from nothing to a round that can be scored. */
export function StartScreen() {
  const { draft, change, forget } = useDraft()
  // Once asked to start, the page names what is at fault until it is put right.
  const [asked, setAsked] = useState(0)
  const { isWorking, work } = useWork()
  const [, go] = useLocation()
  const faults = asked > 0 ? faultsOfDraft(draft) : []
  const section = { draft, change, faultAt: (field: string) => faults.find(each => each.field === field)?.text }
  const start = (): void => {
    setAsked(asked + 1)
    if (faultsOfDraft(draft).length > 0) return
    work(async () => {
      const log = await startOuting(factsOfDraft(draft, today(), thrownUp), nameOf(draft.players, draft.phoneOf))
      forget()
      go(tabPath(log, 'hole'))
    })
  }
  return (
    <div className="page">
      <main>
        <Link className="plain-link" href={paths.home}>
          {say('home')}
        </Link>
        <h1>{say('start-title')}</h1>
        <div className="beside">
          <CourseSection {...section} />
          <PlayersSection {...section} />
        </div>
        <div className="beside">
          <GamesSection {...section} />
          <RoundSection {...section} />
          <StrokesSection draft={draft} />
          <FaultList faults={faults} asked={asked} />
        </div>
      </main>
      <footer className="bottom start-bar">
        <button type="button" className="button loud" disabled={isWorking} onClick={start}>
          {say('start-go')}
        </button>
      </footer>
    </div>
  )
}

function FaultList({ faults, asked }: { readonly faults: readonly FieldFault[]; readonly asked: number }) {
  const list = useRef<HTMLDivElement>(null)
  useEffect(() => {
    // The button is always in reach: what it found comes into sight at each tap of it.
    if (asked > 0) list.current?.scrollIntoView({ block: 'center' })
  }, [asked])
  return (
    <div ref={list} role="alert">
      {faults.length > 0 && (
        <div className="notice">
          <p>{say('start-faults')}</p>
          <ul>
            {[...new Set(faults.map(({ text }) => text))].map(text => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </div>
      )}
    </div>
  )
}
