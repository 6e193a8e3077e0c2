import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'
import { OutingPage } from '../outing/OutingPage.tsx'
import { AddPlayers } from './AddPlayers.tsx'
import { ForEverybody } from './ForEverybody.tsx'
import { GroupList } from './GroupList.tsx'
import { MovePlayer } from './MovePlayer.tsx'
import { ThrowBalls } from './ThrowBalls.tsx'
import { TwosSection } from './TwosSection.tsx'

/** A roll-up with nobody to run it: who plays with whom, who still comes, and what is played across. */
export function GroupsScreen() {
  const outing = useOuting(store => store.outing)
  const isDesk = useOuting(store => store.me?.role === 'desk')
  if (!outing) return null
  return (
    <OutingPage tab="board">
      <h1>{say('groups-title')}</h1>
      <GroupList outing={outing} />
      {isDesk ? (
        <>
          <AddPlayers outing={outing} />
          <MovePlayer outing={outing} />
          <ThrowBalls outing={outing} />
          <ForEverybody outing={outing} />
        </>
      ) : (
        <p className="quiet">{say('groups-desk')}</p>
      )}
      <TwosSection outing={outing} />
    </OutingPage>
  )
}
