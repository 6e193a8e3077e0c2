import { useState } from 'react'
import { Link } from 'wouter'
import { clearedSketchFacts, nextShapeId, shapeSketchFacts } from '#core/outing/acts-sketch.ts'
import type { Outing } from '#core/outing/outing.ts'
import { emptySketch, isEmptySketch, type ShapeKind, type ShapeSketch } from '#core/outing/sketch.ts'
import type { BallId, LogId, ShapeId } from '#core/values/ids.ts'
import { createId } from '../../device/random-ids.ts'
import { fire } from '../../parts/fire.ts'
import { act } from '../../state/actions.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'
import { useGroupShown } from '../hole/use-group-shown.ts'
import { NowhereScreen } from '../home/NowhereScreen.tsx'
import { OutingPage } from '../outing/OutingPage.tsx'
import { planPath, sketchPath } from '../paths.ts'
import { GreenKeys } from './GreenKeys.tsx'
import { NewShape } from './NewShape.tsx'
import { ShapeList } from './ShapeList.tsx'
import { SketchDrawing } from './SketchDrawing.tsx'
import { holeDrawn, newShape, type ShapePlace } from './sketch-view.ts'
import { UndoSketch } from './UndoSketch.tsx'

/** What lies on a hole, put in by taps; it is the course's, and whoever mends the course may mend it. */
export function SketchScreen({ hole }: { readonly hole: number }) {
  const { outing, log, whose } = useGroupShown()
  const role = useOuting(store => store.me?.role ?? null)
  if (!outing || !log) return null
  if (!outing.holes.has(hole)) return <NowhereScreen />
  return <Sketch key={hole} outing={outing} log={log} ball={whose.ball} hole={hole} mayDraw={role === 'desk'} />
}

interface Props {
  readonly outing: Outing
  readonly log: LogId
  /** The ball of this phone's owner. */
  readonly ball: BallId | null
  readonly hole: number
  readonly mayDraw: boolean
}

function Sketch({ outing, log, ball, hole, mayDraw }: Props) {
  const [open, setOpen] = useState<ShapeId | null>(null)
  const sketch = outing.sketches.get(hole) ?? emptySketch
  const drawn = holeDrawn(outing, ball, hole)
  const put = (shape: ShapeId, value: ShapeSketch | null): void => {
    fire(act(value === null ? 'shape taken away' : 'shape drawn', shapeSketchFacts(hole, shape, value)))
  }
  const add = (kind: ShapeKind, place: ShapePlace): void => {
    const shape = nextShapeId(sketch, createId(6))
    put(shape, newShape(kind, place, drawn))
    setOpen(shape)
  }
  return (
    <OutingPage tab="card" above={<Ways outing={outing} log={log} hole={hole} mayDraw={mayDraw} />}>
      <Link className="plain-link" href={planPath(log, { hole, lap: 1 })}>
        {say('bag-to-plan')}
      </Link>
      <div>
        <h1>{say('sketch-title', { hole })}</h1>
        <p className="quiet">{say(mayDraw ? 'sketch-what' : 'sketch-desk')}</p>
      </div>
      <SketchDrawing hole={hole} sketch={sketch} drawn={drawn} open={open} />
      {drawn.length === null && <p className="quiet">{say('sketch-no-length')}</p>}
      {mayDraw && <GreenKeys hole={hole} sketch={sketch} drawn={drawn} />}
      {mayDraw && (
        <section className="section" aria-label={say('sketch-put-in')}>
          <h2>{say('sketch-put-in')}</h2>
          <NewShape sketch={sketch} onNew={add} />
        </section>
      )}
      <section className="section" aria-label={say('sketch-shapes')}>
        <h2>{say('sketch-shapes')}</h2>
        <ShapeList sketch={sketch} drawn={drawn} open={open} onOpen={setOpen} {...(mayDraw && { onShape: put })} />
        {mayDraw && !isEmptySketch(sketch) && (
          <button
            type="button"
            className="button"
            onClick={() => fire(act('sketch taken away', clearedSketchFacts(hole, sketch)))}
          >
            {say('sketch-clear')}
          </button>
        )}
      </section>
    </OutingPage>
  )
}

/** To the hole before and the hole after as the course has them, and back one change. */
function Ways({ outing, log, hole, mayDraw }: Omit<Props, 'ball'>) {
  const [before, after] = [hole - 1, hole + 1].map(each => (outing.holes.has(each) ? each : null))
  return (
    <div className="turn">
      {before && (
        <Link className="button" href={sketchPath(log, before)}>
          {say('sketch-hole', { hole: before })}
        </Link>
      )}
      {mayDraw && <UndoSketch hole={hole} />}
      {after && (
        <Link className="button" href={sketchPath(log, after)}>
          {say('sketch-hole', { hole: after })}
        </Link>
      )}
    </div>
  )
}
