import { useEffect, useEffectEvent, useState } from 'react'
import type { GroupId } from '#core/values/ids.ts'
import { useWork } from '../../parts/use-work.ts'
import { sayWords, type WordsFault } from '../../state/letting-in.ts'
import { useOuting } from '../../state/use-outing.ts'
import type { SpokenWords } from '../../sync/at-the-door.ts'
import { say } from '../../words/say-any.ts'

/** Three words to say to somebody near; a phone that types them asks to be let in. */
export function ThreeWords({ group }: { readonly group: GroupId | null }) {
  const [said, setSaid] = useState<SpokenWords | null>(null)
  const [isOver, setOver] = useState(false)
  const [fault, setFault] = useState<WordsFault | null>(null)
  const { isWorking, work } = useWork()
  const get = (): void =>
    work(async () => {
      const answer = await sayWords(group)
      setOver(false)
      setSaid(answer.ok ? answer.value : null)
      setFault(answer.ok ? null : answer.error)
    })
  return (
    <section className="section" aria-label={say('words-title')}>
      <h2>{say('words-title')}</h2>
      {said === null && <p className="quiet">{say('words-hint')}</p>}
      {said && <Said key={said.words.join()} said={said} onOver={() => setOver(true)} />}
      <div role="alert">{fault && <p className="notice">{say(`words-fault-${fault}`)}</p>}</div>
      {(said === null || isOver) && (
        <button type="button" className="button" disabled={isWorking} onClick={get}>
          {say(isWorking ? 'working' : said ? 'words-new' : 'words-get')}
        </button>
      )}
    </section>
  )
}

/** The words, as large as they fit, and their time. */
function Said({ said: { words, until }, onOver }: { readonly said: SpokenWords; readonly onOver: () => void }) {
  const leftMs = useLeft(until)
  const isForgotten = useIsForgotten(words)
  const isOver = leftMs <= 0 || isForgotten
  const tellOver = useEffectEvent(onOver)
  useEffect(() => {
    if (isOver) tellOver()
  }, [isOver])
  if (isOver) {
    return (
      <p role="alert" className="notice">
        {say(leftMs <= 0 ? 'words-over' : 'words-forgotten')}
      </p>
    )
  }
  const leftS = Math.ceil(leftMs / 1_000)
  return (
    <>
      <p className="three-words">
        {words.map(word => (
          <span key={word}>{word} </span>
        ))}
      </p>
      <p className="quiet">{say('words-left', { min: Math.floor(leftS / 60), s: leftS % 60 })}</p>
      <p>{say('words-how')}</p>
    </>
  )
}

function useLeft(until: number): number {
  const [now, setNow] = useState(() => Date.now())
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), 1_000)
    return () => clearInterval(timer)
  }, [])
  return until - now
}

/** The server had them and has them no more: nothing of it is kept over a restart. */
function useIsForgotten(words: readonly string[]): boolean {
  const isStanding = useOuting(({ foot }) => foot.spoken.some(one => one.words.join() === words.join()))
  const [wasStanding, setWasStanding] = useState(isStanding)
  if (isStanding && !wasStanding) setWasStanding(true)
  return wasStanding && !isStanding
}
