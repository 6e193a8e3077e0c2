import { useState } from 'react'
import { useLocation } from 'wouter'
import type { Outing } from '#core/outing/outing.ts'
import type { LogId } from '#core/values/ids.ts'
import { SecondTap } from '../../parts/SecondTap.tsx'
import { useWork } from '../../parts/use-work.ts'
import { isCardLog } from '../../state/card-taken.ts'
import { removeFromPhone } from '../../state/deleting.ts'
import { isDeletedOnServer } from '../../state/outing-store.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'
import { headWords } from '../finish/result-text.ts'
import { paths } from '../paths.ts'

interface Props {
  readonly log: LogId
  readonly outing: Outing
}

/** Takes the outing off this phone alone; says what would be lost with it. */
export function RemoveOuting({ log, outing }: Props) {
  const alone = useOuting(({ history }) => history.filter(({ seq }) => seq === null).length)
  const isDeleted = useOuting(isDeletedOnServer)
  const [hasFailed, setFailed] = useState(false)
  const [, goTo] = useLocation()
  const { isWorking, work } = useWork()
  const name = headWords(outing)
  const warning = (): string => {
    if (isCardLog(log)) return say('remove-warning-card', { outing: name })
    if (isDeleted) return say('remove-warning-deleted', { outing: name })
    return alone > 0 ? say('remove-warning-alone', { outing: name, n: alone }) : say('remove-warning', { outing: name })
  }
  const remove = (): void =>
    work(async () => {
      const isRemoved = await removeFromPhone(log)
      setFailed(!isRemoved)
      if (isRemoved) goTo(paths.home)
    })
  return (
    <>
      <SecondTap
        label={say('remove-go')}
        sure={say('remove-sure')}
        warning={warning()}
        isDisabled={isWorking}
        onSure={remove}
      />
      {hasFailed && <p role="alert">{say('remove-failed')}</p>}
    </>
  )
}
