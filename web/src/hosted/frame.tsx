import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { say } from '../../../src/language/speak.ts';
import { PageHead } from '../parts/page-head.tsx';
import { PageTitle } from '../parts/page-title.tsx';
import { accountQuery } from './host-calls.ts';

type Place = '/' | '/people' | '/account';

/** The frame around the pages of a host. */
export function Frame({
	place,
	name,
	purpose,
	children,
}: {
	place: Place;
	name: string;
	purpose: string;
	children: ReactNode;
}) {
	const { data: account } = useQuery(accountQuery);
	const link = (to: Place, text: string) => (
		<Link href={to} aria-current={to === place ? 'page' : undefined}>
			{text}
		</Link>
	);
	return (
		<>
			<PageHead label={say('doorway.where')}>
				{link('/', say('doorway.homes'))}
				{account?.person.isHost ? link('/people', say('doorway.people')) : null}
				{link('/account', say('doorway.account'))}
			</PageHead>
			<main id="main" tabIndex={-1} className="page-body">
				<PageTitle name={name} purpose={purpose} />
				{children}
			</main>
		</>
	);
}
