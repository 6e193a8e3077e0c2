import { Link } from 'wouter'
import { LookButton } from '../../parts/LookButton.tsx'
import { lazyPart } from '../../parts/later.tsx'
import { say } from '../../words/say-any.ts'
import { JoinByLink } from '../join/JoinByLink.tsx'
import { paths } from '../paths.ts'
import { NewerPage } from './NewerPage.tsx'
import { OpenFile } from './OpenFile.tsx'
import { OutingList } from './OutingList.tsx'
import { PageNotice } from './PageNotice.tsx'
import { TakeOver } from './TakeOver.tsx'

// What fills in a new outing is no part of scoring a hole.
const PlayAgain = lazyPart(async () => (await import('./PlayAgain.tsx')).PlayAgain)

/** Every way in: the outings on this phone, a new one, three words, a link, a file. */
export function HomeScreen() {
  return (
    <div className="page">
      <main>
        <div>
          <h1>{say('product')}</h1>
          <p className="quiet">{say('product-line')}</p>
        </div>
        <PlayAgain />
        <Link className="button loud" href={paths.start}>
          {say('home-start')}
        </Link>
        <OutingList />
        <section className="section" aria-label={say('bag-title')}>
          <h2>{say('bag-title')}</h2>
          <Link className="button" href={paths.bag}>
            {say('bag-home')}
          </Link>
        </section>
        <section className="section" aria-label={say('home-join')}>
          <h2>{say('home-join')}</h2>
          <Link className="button" href={paths.join}>
            {say('home-words')}
          </Link>
          <JoinByLink />
        </section>
        <section className="section" aria-label={say('take-over-title')}>
          <h2>{say('take-over-title')}</h2>
          <TakeOver />
        </section>
        <section className="section" aria-label={say('home-file')}>
          <h2>{say('home-file')}</h2>
          <OpenFile />
        </section>
        <section className="section" aria-label={say('share-this-phone')}>
          <h2>{say('share-this-phone')}</h2>
          <PageNotice />
          <NewerPage />
          <LookButton />
        </section>
      </main>
    </div>
  )
}
