import { fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { readOuting } from '$lib/forms/outing-form.ts';
import { outingRowForm } from '$lib/forms/outing-row.ts';
import { readForm } from '$lib/forms/read-form.ts';
import type { OutingIssue } from '$lib/outing/check-outing.ts';
import { fieldName, pathOf } from '$lib/outing/field-name.ts';
import type { Outing } from '$lib/outing/outing.ts';
import { press, pressFrom, type Press } from '$lib/outing/press.ts';
import type { SpeedUnit } from '$lib/outing/typed-speed.ts';
import * as outingPlans from '$lib/server/outing-plans.ts';
import { dayAndTime } from '$words/dates.ts';
import { copyName, type Library } from './library-actions.ts';
import { notFound } from '../not-found.ts';

/** One outing of a library, and how its editor shows it. */
export interface Editing extends Library {
	readonly planId: string;
	readonly unit: SpeedUnit;
	readonly timeZone: string;
	/** What its holder may not write, beyond what no outing may hold. */
	readonly alsoWrong: (outing: Outing) => readonly OutingIssue[];
}

type Asked = Pick<RequestEvent, 'request'>;

/** What the buttons of the editor do, for a group's outing and for a runner's own. */
export const editorActions = {
	async save({ request }: Asked, editing: Editing) {
		const { database, holder, planId, now, base } = editing;
		const { draft, revision, wasTold, chosen } = await read(request, editing);
		if (draft.issues.length > 0) {
			return fail(400, { draft, ...(await toldAgain(editing, revision, wasTold)) });
		}
		const { outing } = draft;
		const saved = await outingPlans.save(database, holder, planId, { outing, revision }, now);
		switch (saved.kind) {
			case 'saved':
				redirect(303, `${base}/${planId}?kept${chosen ? `&runner=${chosen}` : ''}`);
				break;
			case 'changed-meanwhile':
				return fail(409, { draft, ...meanwhileOf(saved.theirs, editing) });
			case 'not-found':
				return notFound();
		}
	},
	/** A button of the form without script: the form comes back changed, and nothing is kept. */
	async press({ request }: Asked, editing: Editing) {
		const { draft, revision, pressed, wasTold } = await read(request, editing);
		if (pressed === null) return notFound();
		const told = await toldAgain(editing, revision, wasTold);
		const wrong = draft.issues.filter((issue) => isInField(issue) && !goesWith(issue, pressed));
		if (wrong.length > 0) {
			return fail(400, { draft: { ...draft, issues: wrong }, ...told });
		}
		const outing = pressedOr404(draft.outing, pressed);
		return { draft: { outing, issues: [], values: {} }, ...told };
	},
	/** The form as it was sent: something else on its page is changed. */
	async comeBack({ request }: Asked, editing: Editing) {
		const { draft, revision, wasTold, chosen } = await read(request, editing);
		return { draft, ...(await toldAgain(editing, revision, wasTold)), chosen };
	},
	async keepBoth({ request }: Asked, editing: Editing) {
		const { database, holder, now, base } = editing;
		const { draft, revision, wasTold } = await read(request, editing);
		if (draft.issues.length > 0) {
			return fail(400, { draft, ...(await toldAgain(editing, revision, wasTold)) });
		}
		const outing = { ...draft.outing, name: copyName(draft.outing.name) };
		const made = await outingPlans.create(database, holder, outing, now);
		redirect(303, made.kind === 'created' ? `${base}/${made.id}` : `${base}?full`);
	},
	/** An earlier version becomes the newest one. */
	async bringBack({ request }: Asked, editing: Editing) {
		const { database, holder, planId, now, base } = editing;
		const sent = readForm(await request.formData(), outingRowForm);
		const kept = await outingPlans.versions(database, holder, planId);
		const wanted = kept.find(({ revision }) => sent.ok && String(revision) === sent.value.id);
		const newest = kept[0];
		if (!wanted || !newest) return notFound();
		const { outing } = wanted;
		const { revision } = newest;
		const saved = await outingPlans.save(database, holder, planId, { outing, revision }, now);
		if (saved.kind === 'not-found') notFound();
		redirect(303, `${base}/${planId}?kept`);
	}
};

async function read(request: Request, { unit, alsoWrong }: Editing) {
	const form = await request.formData();
	const { outing, issues, values } = readOuting(form, unit);
	const revision = Number(form.get('revision'));
	const [pressed, chosen] = [form.get('press'), form.get('runner')];
	return {
		draft: { outing, issues: issues.length > 0 ? issues : alsoWrong(outing), values },
		revision: Number.isInteger(revision) ? revision : 0,
		pressed: typeof pressed === 'string' ? pressFrom(pressed) : null,
		wasTold: form.has('told'),
		/** Whose picture stands beside it. */
		chosen: typeof chosen === 'string' && /^[\w-]{1,60}$/.test(chosen) ? chosen : null
	};
}

/** Who was told of another version sees it until they choose: nobody goes over it unseen. */
async function toldAgain(editing: Editing, revision: number, wasTold: boolean) {
	const { database, holder, planId } = editing;
	const theirs = wasTold && (await outingPlans.find(database, holder, planId));
	return theirs ? meanwhileOf(theirs, editing) : { revision, meanwhile: null };
}

function meanwhileOf(
	{ outing, revision, changedAt, changedByName }: outingPlans.OutingPlan,
	{ timeZone }: Editing
) {
	const when = dayAndTime(changedAt, timeZone);
	return { revision, meanwhile: { outing, by: changedByName, when } };
}

/** Not about the outing as a whole: that may be mended by the very press. */
const isInField = ({ path }: OutingIssue) => path.length > 1;

/** What is wrong in a phase is no reason against removing it. */
function goesWith({ path }: OutingIssue, pressed: Press): boolean {
	if (pressed.does !== 'remove') return false;
	return fieldName(path).startsWith(`${fieldName(pathOf(pressed.place))}-`);
}

/** A place that is not there comes from no form of ours. */
function pressedOr404(outing: Outing, pressed: Press): Outing {
	try {
		return press(outing, pressed).outing;
	} catch (error) {
		if (error instanceof RangeError) return notFound();
		throw error;
	}
}
