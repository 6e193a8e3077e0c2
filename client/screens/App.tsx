import { Route, Router, Switch } from 'wouter'
import { useHashLocation } from 'wouter/use-hash-location'
import type { LogId } from '#core/values/ids.ts'
import { ErrorBoundary } from '../parts/ErrorBoundary.tsx'
import { lazyScreen } from '../parts/later.tsx'
import { TopOfPage } from '../parts/TopOfPage.tsx'
import { NowhereScreen } from './home/NowhereScreen.tsx'
import { OutingScreen } from './outing/OutingScreen.tsx'
import { routes } from './routes.ts'

const HomeScreen = lazyScreen(async () => (await import('./home/HomeScreen.tsx')).HomeScreen)
const StartScreen = lazyScreen(async () => (await import('./start/StartScreen.tsx')).StartScreen)
const BagScreen = lazyScreen(async () => (await import('./bag/BagScreen.tsx')).BagScreen)
const TakeOwnScreen = lazyScreen(async () => (await import('./bag/TakeOwnScreen.tsx')).TakeOwnScreen)
const JoinScreen = lazyScreen(async () => (await import('./join/JoinScreen.tsx')).JoinScreen)

/** Every page, by the address behind the `#`. */
export function App() {
  return (
    <ErrorBoundary>
      <Router hook={useHashLocation}>
        <TopOfPage />
        <Switch>
          <Route path={routes.home} component={HomeScreen} />
          <Route path={routes.start} component={StartScreen} />
          <Route path={routes.bag}>
            <BagScreen />
          </Route>
          <Route path={routes.join} component={JoinScreen} />
          <Route path={routes.own} component={TakeOwnScreen} />
          <Route path="/o/:log/*?">{({ log }) => <OutingScreen key={log} log={log as LogId} />}</Route>
          <Route component={NowhereScreen} />
        </Switch>
      </Router>
    </ErrorBoundary>
  )
}
