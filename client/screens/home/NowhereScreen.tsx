import { Link } from 'wouter'
import { say } from '../../words/say.ts'
import { paths } from '../paths.ts'

export function NowhereScreen() {
  return (
    <div className="page">
      <main>
        <h1>{say('nothing-here')}</h1>
        <Link className="button loud" href={paths.home}>
          {say('to-home')}
        </Link>
      </main>
    </div>
  )
}
