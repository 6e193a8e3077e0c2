import { useCallback, useMemo } from 'react'
import { ratedGenders } from '#core/handicap/slope.ts'
import { ratingsChosen } from '#core/plan/acts.ts'
import { enoughNumbers } from '#core/plan/bag.ts'
import type { Golfer } from '#core/plan/golfer.ts'
import type { Plan } from '#core/plan/plan.ts'
import { Choice } from '../../parts/Choice.tsx'
import { fire } from '../../parts/fire.ts'
import { useWorkedOut } from '../../parts/use-worked-out.ts'
import { actOnPlan } from '../../state/player-log.ts'
import { textOfFigures } from '../../words/advice-text.ts'
import { say } from '../../words/say-any.ts'
import { golferOfPlan } from './golfer-of-plan.ts'
import { type HabitQuestion, habitQuestions } from './habit-questions.ts'
import { IndexField } from './IndexField.tsx'

/** The player's Handicap Index, and with it what published figures say of each habit. */
export function NumbersSay({ plan }: { readonly plan: Plan }) {
  const golfer = useMemo(() => golferOfPlan(plan), [plan])
  const questions = useMemo(() => habitQuestions(plan), [plan])
  return (
    <section className="section" aria-label={say('figures-title')}>
      <h2>{say('figures-title')}</h2>
      <p className="quiet">{say('figures-what')}</p>
      <div className="private stack">
        <IndexField tenths={plan.indexTenths} />
        <Choice
          label={say('figures-ratings')}
          value={plan.ratings ?? ''}
          options={ratedGenders.map(value => ({ value, text: say(`ratings-${value}`) }))}
          onValue={value => {
            const ratings = ratedGenders.find(each => each === value)
            if (ratings) fire(actOnPlan('ratings chosen', () => ratingsChosen(ratings)))
          }}
        />
      </div>
      {golfer === null ? (
        <p>{say(plan.bag.clubs.length < enoughNumbers ? 'figures-few-clubs' : 'figures-ask')}</p>
      ) : (
        <>
          <p className="quiet">{say('figures-range')}</p>
          <ul className="lines private">
            {questions.map(question => (
              <li key={question.title}>
                <HabitCard golfer={golfer} question={question} />
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  )
}

interface CardProps {
  readonly golfer: Golfer
  readonly question: HabitQuestion
}

/** One habit: where it is asked, the answer, and the figures behind it. */
function HabitCard({ golfer, question }: CardProps) {
  const { title, at, ways, caution, none, work } = question
  const figures = useWorkedOut(useCallback(() => work(golfer), [work, golfer]))
  const text = figures && textOfFigures(figures, ways)
  return (
    <div className="stack">
      <div>
        <h3>{title}</h3>
        {at !== '' && <p className="quiet">{at}</p>}
      </div>
      {figures === undefined && <p role="status">{say('figures-working')}</p>}
      {figures === null && <p>{none}</p>}
      {text && (
        <div>
          <p className="own-answer">{text.answer}</p>
          {text.lines.map(line => (
            <p key={line}>{line}</p>
          ))}
          {caution !== null && <p className="quiet">{caution}</p>}
        </div>
      )}
    </div>
  )
}
