import { useQuery } from '@tanstack/react-query';
import { useEffect } from 'react';
import { Link } from 'wouter';
import type { Door as Seen } from '../../../../src/app/door.ts';
import { say } from '../../../../src/language/speak.ts';
import { queryOf } from '../../api/refresh.ts';
import { RequestProblem } from '../../api/request.ts';
import { Loading } from '../../parts/loading.tsx';
import { PageHead } from '../../parts/page-head.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import { Problem } from '../../parts/problem.tsx';
import { DeviceList } from './device-list.tsx';
import { DoorCode, type OpenDoor } from './door-code.tsx';
import './devices.css';

/** Soon after it, the code shown is worth nothing: a new one is asked for. */
const AFTER_MS = 500;

/** What is typed to start the program so that other devices may come in. */
const SHARE_COMMAND = 'npm start -- --share';

function ClosedDoor() {
	return (
		<section className="section stack" aria-label={say('devicesPage.notShared')}>
			<p>{say('devicesPage.closed')}</p>
			<p>{say('devicesPage.toShare')}</p>
			<p>
				<code>{SHARE_COMMAND}</code>
			</p>
			<p>{say('devicesPage.thenShared')}</p>
		</section>
	);
}

/** What a paired device sees: it lets nobody in. */
function ElsewhereDoor() {
	return (
		<section className="section" aria-label={say('devicesPage.title')}>
			<p>{say('devicesPage.elsewhere')}</p>
		</section>
	);
}

function SharedDoor({ door }: { door: OpenDoor }) {
	return (
		<>
			<section className="section" aria-labelledby="let-in">
				<h2 id="let-in">{say('devicesPage.letIn')}</h2>
				<DoorCode door={door} />
				<p className="quiet small">{say('devicesPage.notEncrypted')}</p>
			</section>
			<section className="section" aria-labelledby="who">
				<h2 id="who">{say('devicesPage.who')}</h2>
				<DeviceList devices={door.devices} />
			</section>
		</>
	);
}

function Door({ door, problem }: { door: Seen | undefined; problem: Error | null }) {
	if (door) return door.shared ? <SharedDoor door={door} /> : <ClosedDoor />;
	if (problem instanceof RequestProblem && problem.code === 'other-device') return <ElsewhereDoor />;
	return problem ? <Problem of={problem} /> : <Loading what={say('devicesPage.loading')} />;
}

/** Devices of the network: how to let one in, who is in, and how to send it away. */
export function Devices() {
	const { data: door, error } = useQuery({
		...queryOf('listDevices', {}),
		staleTime: 0,
		refetchInterval: ({ state }) => (state.data?.shared ? Math.max(0, state.data.validForMs) + AFTER_MS : false),
	});
	useEffect(() => {
		document.title = `${say('devicesPage.title')} · Dyelot`;
	}, []);
	return (
		<>
			<PageHead label={say('seasonsPage.beside')}>
				<Link href="/seasons">{say('frame.allSeasons')}</Link>
			</PageHead>
			<main id="main" tabIndex={-1} className="page-body">
				<PageTitle name={say('devicesPage.title')} purpose={say('devicesPage.purpose')} />
				<Door door={door} problem={error} />
			</main>
		</>
	);
}
