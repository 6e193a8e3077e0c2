import { useEffect } from 'react'
import { type DefaultParams, Link, Route, Switch } from 'wouter'
import type { LogId } from '#core/values/ids.ts'
import { fire } from '../../parts/fire.ts'
import { Loading } from '../../parts/Loading.tsx'
import { lazyScreen } from '../../parts/later.tsx'
import { openOuting } from '../../state/actions.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say.ts'
import { HoleScreen } from '../hole/HoleScreen.tsx'
import { NowhereScreen } from '../home/NowhereScreen.tsx'
import { paths, planPath } from '../paths.ts'
import { outingRoutes } from '../routes.ts'

const AimsScreen = lazyScreen(async () => (await import('../hole/own/AimsScreen.tsx')).AimsScreen)
const BagScreen = lazyScreen(async () => (await import('../bag/BagScreen.tsx')).BagScreen)
const BoardScreen = lazyScreen(async () => (await import('../board/BoardScreen.tsx')).BoardScreen)
const CardScreen = lazyScreen(async () => (await import('../card/CardScreen.tsx')).CardScreen)
const FinishScreen = lazyScreen(async () => (await import('../finish/FinishScreen.tsx')).FinishScreen)
const GamesScreen = lazyScreen(async () => (await import('../games/GamesScreen.tsx')).GamesScreen)
const GroupsScreen = lazyScreen(async () => (await import('../groups/GroupsScreen.tsx')).GroupsScreen)
const MendScreen = lazyScreen(async () => (await import('../mend/MendScreen.tsx')).MendScreen)
const PlanScreen = lazyScreen(async () => (await import('../hole/own/PlanScreen.tsx')).PlanScreen)
const ResetScreen = lazyScreen(async () => (await import('../hole/ResetScreen.tsx')).ResetScreen)
const RulingsScreen = lazyScreen(async () => (await import('../rulings/RulingsScreen.tsx')).RulingsScreen)
const SketchScreen = lazyScreen(async () => (await import('../sketch/SketchScreen.tsx')).SketchScreen)
const ShareScreen = lazyScreen(async () => (await import('../share/ShareScreen.tsx')).ShareScreen)

/** One outing: opens it and shows the part that the address names. */
export function OutingScreen({ log }: { readonly log: LogId }) {
  const phase = useOuting(store => store.phase)
  const isThis = useOuting(store => store.log === log)
  const hasOuting = useOuting(store => store.outing !== null)
  useEffect(() => {
    fire(openOuting(log))
  }, [log])
  if (isThis && phase === 'not here') return <NotHere />
  if (!isThis || phase !== 'open' || !hasOuting) return <Loading />
  return (
    <Switch>
      <Route path={outingRoutes.board} component={BoardScreen} />
      <Route path={outingRoutes.card} component={CardScreen} />
      <Route path={outingRoutes.finish} component={FinishScreen} />
      <Route path={outingRoutes.games} component={GamesScreen} />
      <Route path={outingRoutes.groups} component={GroupsScreen} />
      <Route path={outingRoutes.mend} component={MendScreen} />
      <Route path={outingRoutes.rulings} component={RulingsScreen} />
      <Route path={outingRoutes.sketch}>{({ hole }) => <SketchScreen hole={Number(hole)} />}</Route>
      <Route path={outingRoutes.share} component={ShareScreen} />
      <Route path={outingRoutes.targets} component={AimsScreen} />
      <Route path={outingRoutes.plan}>
        {({ hole, lap }) => <PlanScreen at={{ hole: Number(hole), lap: Number(lap) }} />}
      </Route>
      <Route path={outingRoutes['bag-from']}>
        {({ hole, lap }) => <BagScreen back={planPath(log, { hole: Number(hole), lap: Number(lap) })} />}
      </Route>
      <Route path={outingRoutes.reset}>{({ three }) => <ResetScreen three={Number(three)} />}</Route>
      <Route path={outingRoutes.hole}>
        {({ hole, lap }: DefaultParams) => (
          <HoleScreen hole={hole === undefined ? null : Number(hole)} lap={Number(lap ?? 1)} />
        )}
      </Route>
      <Route component={NowhereScreen} />
    </Switch>
  )
}

function NotHere() {
  return (
    <div className="page">
      <main>
        <h1>{say('not-here')}</h1>
        <p>{say('not-here-why')}</p>
        <Link className="button loud" href={paths.home}>
          {say('to-home')}
        </Link>
      </main>
    </div>
  )
}
