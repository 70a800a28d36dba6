import { useQuery } from '@tanstack/react-query';
import { useEffect } from 'react';
import { Link } from 'wouter';
import { queryOf } from '../../api/refresh.ts';
import { Loading } from '../../parts/loading.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import { Problem } from '../../parts/problem.tsx';
import { DeviceList } from './device-list.tsx';
import { DoorCode, type OpenDoor } from './door-code.tsx';
import './devices.css';

/** Soon after it, the code shown is worth nothing: a new one is asked for. */
const AFTER_MS = 500;

function ClosedDoor() {
	return (
		<section className="section stack" aria-label="Not shared">
			<p>Dyelot is open to this computer alone. Nobody else on the network can reach it.</p>
			<p>
				To use it from your phone at home, stop it and start it again with <code>npm start -- --share</code>. Then a
				code and an address stand here, and only devices that gave the code come in.
			</p>
		</section>
	);
}

function SharedDoor({ door }: { door: OpenDoor }) {
	return (
		<>
			<section className="section" aria-labelledby="let-in">
				<h2 id="let-in">Let a device in</h2>
				<DoorCode door={door} />
				<p className="quiet small">
					What passes between phone and computer is not encrypted: share on your own network at home, not in a café.
				</p>
			</section>
			<section className="section" aria-labelledby="who">
				<h2 id="who">Who may come in</h2>
				<DeviceList devices={door.devices} />
			</section>
		</>
	);
}

/** Devices of the network: how to let one in, who is in, and how to send it away. */
export function Devices() {
	const { data: door, error } = useQuery({
		...queryOf('listDevices', {}),
		staleTime: 0,
		refetchInterval: ({ state }) => (state.data?.shared ? Math.max(0, state.data.validForMs) + AFTER_MS : false),
	});
	useEffect(() => {
		document.title = 'Devices · Dyelot';
	}, []);
	return (
		<>
			<header className="head">
				<Link href="/" className="wordmark">
					Dyelot
				</Link>
				<nav aria-label="Beside this page">
					<Link href="/seasons">All seasons</Link>
				</nav>
			</header>
			<main id="main" tabIndex={-1} className="page-body">
				<PageTitle
					name="Devices"
					purpose="The same wardrobe on your phone, at home: photograph a piece there, or look at the season on the sofa."
				/>
				<Problem of={error} />
				{door ? door.shared ? <SharedDoor door={door} /> : <ClosedDoor /> : error ? null : <Loading what="the door" />}
			</main>
		</>
	);
}
