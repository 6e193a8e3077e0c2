import { Choice } from '../../parts/Choice.tsx'
import { Field } from '../../parts/Field.tsx'
import { formatList } from '../../words/figures.ts'
import { say } from '../../words/say.ts'
import { CourseSource } from './CourseSource.tsx'
import { indexesTwice, withIndexesFilled } from './draft.ts'
import { HoleFields } from './HoleFields.tsx'
import type { SectionProps } from './section.ts'
import { TeeFields } from './TeeFields.tsx'

/** The course: from a file or an earlier outing, or typed in. */
export function CourseSection({ draft, change, faultAt }: SectionProps) {
  return (
    <section className="section" aria-label={say('start-course')}>
      <h2>{say('start-course')}</h2>
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
      {indexesTwice(draft).map(({ index, holes }) => (
        <p key={index} className="notice" role="status">
          {say('start-index-twice', { index, holes: formatList(holes) })}
        </p>
      ))}
      <button type="button" className="button" onClick={() => change(withIndexesFilled(draft))}>
        {say('start-fill-indexes')}
      </button>
      <TeeFields draft={draft} change={change} faultAt={faultAt} />
    </section>
  )
}
