import { useState } from 'react'
import { lazyPart } from '../../parts/later.tsx'
import { useOuting } from '../../state/use-outing.ts'

const NewsLine = lazyPart(async () => (await import('./NewsLine.tsx')).NewsLine)

/** What another phone corrected since this page came up; its words come when another phone has written at all. */
export function News() {
  const [from] = useState(useOuting(store => store.history.length))
  const hasOthers = useOuting(({ history, me }) => history.slice(from).some(({ op }) => op.device !== me?.device))
  return <div role="status">{hasOthers && <NewsLine from={from} />}</div>
}
