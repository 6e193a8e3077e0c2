import { lazy, Suspense } from 'react'
import { Route, Router, Switch } from 'wouter'
import { useHashLocation } from 'wouter/use-hash-location'
import type { LogId } from '#core/values/ids.ts'
import { ErrorBoundary } from '../parts/ErrorBoundary.tsx'
import { Loading } from '../parts/Loading.tsx'
import { TopOfPage } from '../parts/TopOfPage.tsx'
import { HomeScreen } from './home/HomeScreen.tsx'
import { NowhereScreen } from './home/NowhereScreen.tsx'
import { OutingScreen } from './outing/OutingScreen.tsx'
import { routes } from './routes.ts'

const StartScreen = lazy(async () => ({ default: (await import('./start/StartScreen.tsx')).StartScreen }))
const BagScreen = lazy(async () => ({ default: (await import('./bag/BagScreen.tsx')).BagScreen }))
const JoinScreen = lazy(async () => ({ default: (await import('./join/JoinScreen.tsx')).JoinScreen }))

/** Every page, by the address behind the `#`. */
export function App() {
  return (
    <ErrorBoundary>
      <Router hook={useHashLocation}>
        <TopOfPage />
        <Suspense fallback={<Loading />}>
          <Switch>
            <Route path={routes.home} component={HomeScreen} />
            <Route path={routes.start} component={StartScreen} />
            <Route path={routes.bag}>
              <BagScreen />
            </Route>
            <Route path={routes.join} component={JoinScreen} />
            <Route path="/o/:log/*?">{({ log }) => <OutingScreen key={log} log={log as LogId} />}</Route>
            <Route component={NowhereScreen} />
          </Switch>
        </Suspense>
      </Router>
    </ErrorBoundary>
  )
}
