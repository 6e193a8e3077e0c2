import type { ReactNode } from 'react'
import { useStore } from 'zustand'
import { Foot } from '../../parts/Foot.tsx'
import { FirstCorner, SecondCorner } from '../../parts/LockCorner.tsx'
import { lockStore } from '../../parts/lock.ts'
import { Tabs } from '../../parts/Tabs.tsx'
import { usePageFocus } from '../../parts/use-page-focus.ts'
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
  const isLocked = useStore(lockStore)
  const page = usePageFocus()
  return (
    <div className="page">
      {isLocked && <FirstCorner />}
      <main ref={page} className={tab} inert={isLocked}>
        {hasNewer && <p className="notice">{say('newer')}</p>}
        {children}
      </main>
      <footer className={isLocked ? 'bottom still' : 'bottom'} inert={isLocked}>
        {!isLocked && above}
        <Foot />
        {log && !isLocked && <Tabs log={log} current={tab} />}
      </footer>
      {isLocked && <SecondCorner />}
    </div>
  )
}
