import { useEffect, useState } from 'react'
import type { PlainCourse } from '#core/outing/plain-file.ts'
import type { LogId } from '#core/values/ids.ts'
import { FilePick } from '../../parts/FilePick.tsx'
import { Select } from '../../parts/Select.tsx'
import { useWork } from '../../parts/use-work.ts'
import { listOutings, type OutingSummary, readOuting } from '../../state/actions.ts'
import { say } from '../../words/say.ts'
import { courseOfFile, courseOfOuting, withCourse } from './course-of.ts'
import type { DraftInHand } from './use-draft.ts'

/** Takes a course from an earlier outing on this phone or from a file. */
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
  const takeFile = (text: string, name: string): void => {
    const found = courseOfFile(text)
    if (found.ok) put(found.value, name)
    else setFault(found.error.map(({ path, code }) => `${path} ${code}`.trim()).join('; '))
  }
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
              text: [courseName, title === courseName ? null : title, day].filter(Boolean).join(' · '),
            })),
          ]}
          onValue={takeOuting}
        />
      )}
      <FilePick label={say('start-course-file')} onText={takeFile} />
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
