import { useQuery } from '@tanstack/react-query';
import { say } from '../../../../src/language/speak.ts';
import { queryOf } from '../../api/refresh.ts';
import { Problem } from '../../parts/problem.tsx';

/** What the program found amiss in the home when it opened it, and what it did; nothing where all was well. */
export function FoundAtStart() {
	const { data: status, error } = useQuery(queryOf('getStatus', {}));
	if (!status || status.findings.length === 0) return <Problem of={error} />;
	return (
		<section className="section" aria-labelledby="found-at-start">
			<h2 id="found-at-start">{say('seasonsPage.found')}</h2>
			<ul>
				{status.findings.map((finding) => (
					<li key={finding}>{finding}</li>
				))}
			</ul>
		</section>
	);
}
