import { Choice } from '../../parts/Choice.tsx'
import { Field } from '../../parts/Field.tsx'
import { formatList } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { CourseSource } from './CourseSource.tsx'
import { type Draft, holesInPlay, indexesTwice, indexesUnused, withIndexesFilled } from './draft.ts'
import { faultsOfCourse } from './draft-faults.ts'
import { HoleFields } from './HoleFields.tsx'
import { IndexKeys } from './IndexKeys.tsx'
import type { SectionProps } from './section.ts'
import { TeeFields } from './TeeFields.tsx'

/** The course: from a file, a friend or an earlier outing, or typed in. One that was taken whole lies behind a tap. */
export function CourseSection(props: SectionProps) {
  const { draft } = props
  const isTaken = draft.courseFrom !== '' && faultsOfCourse(draft).length === 0
  return (
    <section className="section" aria-label={say('start-course')}>
      <h2>{say('start-course')}</h2>
      {isTaken ? (
        <details>
          <summary>{courseWords(draft)}</summary>
          <div className="stack">
            <CourseFields {...props} />
          </div>
        </details>
      ) : (
        <CourseFields {...props} />
      )}
    </section>
  )
}

/** "Quillmoor, 18 holes, par 72, White" */
function courseWords(draft: Draft): string {
  const par = holesInPlay(draft).reduce((sum, hole) => sum + hole.par, 0)
  const tees = draft.tees.map(({ name }) => name)
  const holes = say(draft.length === 18 ? 'start-18' : 'start-9')
  return formatList([draft.courseName, holes, say('start-par', { par }), ...tees].filter(Boolean))
}

function CourseFields({ draft, change, faultAt }: SectionProps) {
  const unused = indexesUnused(draft)
  return (
    <>
      <CourseSource draft={draft} change={change} />
      <Field
        label={say('start-course-name')}
        value={draft.courseName}
        onValue={courseName => change({ courseName })}
        fault={faultAt('courseName')}
      />
      <Choice
        label={say('start-length')}
        value={String(draft.length)}
        options={[
          { value: '18', text: say('start-18') },
          { value: '9', text: say('start-9') },
        ]}
        onValue={value => change({ length: value === '9' ? 9 : 18, startHole: 1 })}
      />
      <h3>{say('start-holes')}</h3>
      <p className="quiet">{say('start-holes-hint')}</p>
      <HoleFields draft={draft} change={change} faultAt={faultAt} />
      <h3>{say('index-keys')}</h3>
      <p className="quiet">{say('index-keys-hint')}</p>
      <IndexKeys draft={draft} change={change} />
      {indexesTwice(draft).map(({ index, holes }) => (
        <p key={index} className="notice" role="status">
          {say('start-index-twice', { index, holes: formatList(holes) })}
        </p>
      ))}
      {unused.length > 0 && (
        <p className="notice" role="status">
          {say('start-index-unused', { indexes: formatList(unused) })}
        </p>
      )}
      <button type="button" className="button" onClick={() => change(withIndexesFilled(draft))}>
        {say('start-fill-indexes')}
      </button>
      <TeeFields draft={draft} change={change} faultAt={faultAt} />
    </>
  )
}
