import {
	demoOf,
	demoPersonOf,
	demoUsers,
	isDemoHere,
	isEmptyHouse
} from '$lib/server/demo/demo.ts';
import { loadDemo } from '$lib/server/demo/load.ts';
import { mayLoad } from '$lib/server/demo/may-change.ts';
import { demoPlaces } from '$lib/server/demo/places.ts';
import { removeDemo } from '$lib/server/demo/remove.ts';
import { lanternStreet } from '$words/demo.ts';
import { NOW } from '../in-house.ts';
import { onlyFor, type Row } from './row.ts';

/** A press at the server's own computer, which is as far as anybody comes. */
const pressed = {
	url: new URL('http://localhost:3000/demo'),
	request: new Request('http://localhost:3000/demo'),
	getClientAddress: () => '127.0.0.1'
};

/** The made-up group beside real people: it is nobody's, tells nothing, and brings nothing in. */
export const demoRows: readonly Row[] = [
	onlyFor('demo/demo.demoOf', [], null, (who, to) => demoOf(to.db, who.id)),
	onlyFor('demo/demo.demoPersonOf', [], null, (who, to) => demoPersonOf(to.db, who.id)),
	onlyFor('demo/demo.demoUsers', [], new Map(), (_, to) => demoUsers(to.db)),
	onlyFor('demo/demo.isDemoHere', [], false, (_, to) => isDemoHere(to.db)),
	onlyFor('demo/demo.isEmptyHouse', [], false, (_, to) => isEmptyHouse(to.db)),
	onlyFor('demo/places.demoPlaces', [], null, (_, to) => demoPlaces(to.db)),
	onlyFor('demo/may-change.mayLoad', [], false, (_, to) =>
		mayLoad({ ...to.house, environment: { origin: null } as never }, pressed)
	),
	onlyFor('demo/load.loadDemo', [], 'not-empty', (_, to) => loadDemo(to.house, lanternStreet, NOW)),
	onlyFor('demo/remove.removeDemo', [], undefined, (_, to) => removeDemo(to.db))
];
