import { useEffect, useState } from 'react'
import type { PlainCourse } from '#core/outing/plain-file.ts'
import type { LogId } from '#core/values/ids.ts'
import { Select } from '../../parts/Select.tsx'
import { useWork } from '../../parts/use-work.ts'
import { listOutings, type OutingSummary } from '../../state/actions.ts'
import { readOuting } from '../../state/kept-outings.ts'
import { formatDay, formatDots } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { CodeReader } from '../home/CodeReader.tsx'
import { useCodes } from '../home/use-codes.ts'
import { courseOfFile, courseOfOuting, withCourse } from './course-of.ts'
import type { DraftInHand } from './use-draft.ts'

/** Takes a course from an earlier outing on this phone, or from a friend by codes or a file. */
export function CourseSource({ draft, change }: DraftInHand) {
  const [outings, setOutings] = useState<readonly OutingSummary[]>([])
  const [fault, setFault] = useState<string | undefined>()
  const { work } = useWork()
  useEffect(() => {
    listOutings().then(setOutings, () => setOutings([]))
  }, [])
  const put = (course: PlainCourse | null, from: string): void => {
    setFault(course ? undefined : say('start-course-not-whole'))
    if (course) change(withCourse(draft, course, from))
  }
  const takeOuting = (log: string): void => {
    if (log !== '') work(async () => put(await courseOf(log as LogId), log))
  }
  const codes = useCodes(async (text, name) => {
    const found = courseOfFile(text)
    if (!found.ok) return found.error.map(({ path, code }) => `${path} ${code}`.trim()).join('; ')
    put(found.value, name || say('start-course-friend'))
    return found.value && say('start-course-taken', { course: found.value.name ?? '' })
  })
  const named = outings.filter(({ courseName }) => courseName !== null)
  return (
    <>
      {named.length > 0 && (
        <Select
          label={say('start-course-from')}
          value={named.some(({ log }) => log === draft.courseFrom) ? draft.courseFrom : ''}
          options={[
            { value: '', text: say('start-course-typed') },
            ...named.map(({ log, courseName, title, day }) => ({
              value: log,
              text: formatDots([courseName, title === courseName ? null : title, day === null ? null : formatDay(day)]),
            })),
          ]}
          onValue={takeOuting}
        />
      )}
      <details>
        <summary>{say('start-course-of-friend')}</summary>
        <div className="stack">
          <p className="quiet">{say('start-course-file-hint')}</p>
          <CodeReader codes={codes} label={say('start-course-file')} />
        </div>
      </details>
      {fault && (
        <p className="fault" role="alert">
          {fault}
        </p>
      )}
    </>
  )
}

async function courseOf(log: LogId): Promise<PlainCourse | null> {
  const kept = await readOuting(log)
  return kept && courseOfOuting(kept.outing)
}
