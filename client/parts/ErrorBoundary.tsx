import { Component, type ReactNode } from 'react'
import { say } from '../words/say.ts'

interface Props {
  readonly children: ReactNode
}

/** Catches what breaks while a page is drawn; the scores are on the phone and stay there. */
export class ErrorBoundary extends Component<Props, { readonly isBroken: boolean }> {
  override state = { isBroken: false }

  static getDerivedStateFromError(): { readonly isBroken: boolean } {
    return { isBroken: true }
  }

  override render(): ReactNode {
    if (!this.state.isBroken) return this.props.children
    return (
      <div className="page">
        <main>
          <h1>{say('broken-title')}</h1>
          <p>{say('broken-why')}</p>
          <a className="button loud" href="./">
            {say('open-again')}
          </a>
        </main>
      </div>
    )
  }
}
