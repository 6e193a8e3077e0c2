import type { ReactNode } from 'react'
import { Foot } from '../../parts/Foot.tsx'
import { Tabs } from '../../parts/Tabs.tsx'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say.ts'
import type { OutingTab } from '../paths.ts'

interface Props {
  readonly tab: OutingTab
  readonly children: ReactNode
  /** What stays in reach above the foot. */
  readonly above?: ReactNode
}

/** The frame of every page of an outing: what it shows, the foot, the tabs. */
export function OutingPage({ tab, children, above }: Props) {
  const log = useOuting(store => store.log)
  const hasNewer = useOuting(store => (store.outing?.newer.length ?? 0) > 0)
  return (
    <div className="page">
      <main className={tab}>
        {hasNewer && <p className="notice">{say('newer')}</p>}
        {children}
      </main>
      <div className="bottom">
        {above}
        <Foot />
        {log && <Tabs log={log} current={tab} />}
      </div>
    </div>
  )
}
