import { Component, type ReactNode } from 'react';
import { say } from '../../../src/language/speak.ts';
import { Button } from '../parts/button.tsx';

/** Holds a page whose code did not arrive, or that broke while it was drawn: the rest stays, and it can be asked for again. */
export class Guard extends Component<{ readonly children: ReactNode }, { readonly broken: boolean }> {
	override state = { broken: false };

	static getDerivedStateFromError() {
		return { broken: true };
	}

	override render() {
		if (!this.state.broken) return this.props.children;
		return (
			<div className="problem stack" role="alert">
				<p>
					<strong>{say('frame.broken')}</strong> {say('frame.brokenHow')}
				</p>
				<Button onPress={() => location.reload()}>{say('frame.loadAgain')}</Button>
			</div>
		);
	}
}
