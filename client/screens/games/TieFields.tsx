import { countbackMethods } from '#core/card/countback-methods.ts'
import { type TieTerms, tieEnds, tieSchemes } from '#core/formats/game-methods.ts'
import { say } from '../../words/say-any.ts'
import { OneOf } from './OneOf.tsx'

interface Props {
  readonly game: string
  /** The terms that a new game of the format proposes. */
  readonly proposed: TieTerms | null
  /** Null where ties stand. */
  readonly ties: TieTerms | null
  readonly onTies: (ties: TieTerms | null) => void
}

const usualTies: TieTerms = {
  method: 'share-of-handicap',
  scheme: 'nine-six-three-one',
  holes: 'card-order',
  ifStillTied: 'shared',
}
const holes = ['card-order', 'order-of-play'] as const satisfies readonly TieTerms['holes'][]

/** What splits a tie: nothing, or a countback with its terms. */
export function TieFields(props: Props) {
  const { game, proposed, ties, onTies } = props
  return (
    <>
      <OneOf
        label={say('game-ties', { game })}
        value={ties === null ? 'stand' : 'countback'}
        values={['stand', 'countback']}
        textOf={each => say(each === 'stand' ? 'ties-stand' : 'ties-countback')}
        onValue={each => onTies(each === 'stand' ? null : (proposed ?? usualTies))}
      />
      {ties && <Terms {...props} ties={ties} />}
    </>
  )
}

function Terms({ game, ties, onTies }: Props & { readonly ties: TieTerms }) {
  return (
    <>
      <OneOf
        label={say('game-tie-method', { game })}
        value={ties.method}
        values={countbackMethods}
        textOf={each => say(`tie-method-${each}`)}
        onValue={method => onTies({ ...ties, method })}
      />
      <OneOf
        label={say('game-tie-scheme', { game })}
        value={ties.scheme}
        values={tieSchemes}
        textOf={each => say(`tie-scheme-${each}`)}
        onValue={scheme => onTies({ ...ties, scheme })}
      />
      <OneOf
        label={say('game-tie-holes', { game })}
        value={ties.holes}
        values={holes}
        textOf={each => say(`tie-holes-${each}`)}
        onValue={each => onTies({ ...ties, holes: each })}
      />
      <OneOf
        label={say('game-tie-end', { game })}
        value={ties.ifStillTied}
        values={tieEnds}
        textOf={each => say(`tie-end-${each}`)}
        onValue={ifStillTied => onTies({ ...ties, ifStillTied })}
      />
    </>
  )
}
