import { longestRunInCycle } from '../physiology/longest-run.ts';
import {
	kineticsSpread,
	pulseAfter,
	secondsUntil,
	usualKinetics,
	type Kinetics
} from '../physiology/pulse-kinetics.ts';
import { pulseEdges } from '../physiology/pulse-response.ts';
import { shortestRecoveryInCycle } from '../physiology/shortest-recovery.ts';
import { steadyCycle } from '../physiology/steady-cycle.ts';
import { steadyPulse, type RunnerPulse } from '../physiology/steady-pulse.ts';
import type { Gait } from '../physiology/metabolic-cost.ts';
import {
	halfDigit,
	published,
	type PublishedValue,
	type Subject,
	type Subjects
} from './published-value.ts';

const equalTaus: Kinetics = { risingTauSeconds: 57.6, fallingTauSeconds: 57.6 };
const quickTaus: Kinetics = { risingTauSeconds: 30, fallingTauSeconds: 50 };

/** Seconds until so much of a change is made. */
function secondsToMake(share: number): number {
	return secondsUntil(0, 1, share);
}

/** How many beats lower a pulse stands a minute after effort. */
function dropInOneMinute(
	effortBpm: number,
	settlesAtBpm: number,
	fallingTauSeconds: number
): number {
	return (
		effortBpm - pulseAfter(effortBpm, settlesAtBpm, 60, { ...usualKinetics, fallingTauSeconds })
	);
}

/** Pulse at the end of a phase, counted from one, of runs of 60 s and walks of 90 s. */
function edgeOfRuns(phase: number, kinetics: Kinetics): number {
	const run = { durationSeconds: 60, steadyBpm: 160 };
	const walk = { durationSeconds: 90, steadyBpm: 100 };
	const steps = [run, walk, run, walk, run, walk, run, walk];
	return pulseEdges(steps, 100, kinetics)[phase]!.bpm;
}

function cycle(runSeconds: number, walkSeconds: number, kinetics: Kinetics) {
	return steadyCycle({ runSeconds, walkSeconds, runSteadyBpm: 160, walkSteadyBpm: 100 }, kinetics);
}

const unfit: RunnerPulse = {
	resting: { bpm: 70, spreadBpm: 3 },
	maximum: { bpm: 180, spreadBpm: 11.4 },
	capacity: { mlPerKgPerMinute: 35, spread: 2 }
};

function steadyAtSpeed(gait: Gait, speedMetresPerMinute: number): number {
	const steady = steadyPulse({ kind: 'speed', gait, speedMetresPerMinute, grade: 0 }, unfit);
	return steady.kind === 'steady' ? steady.bpm : NaN;
}

/** From speeds to the settled cycle: walks of 90 m/min, runs of 130 m/min. */
function cycleOfSpeeds(runSeconds: number, walkSeconds: number, kinetics: Kinetics) {
	const runSteadyBpm = steadyAtSpeed('run', 130);
	const walkSteadyBpm = steadyAtSpeed('walk', 90);
	return steadyCycle({ runSeconds, walkSeconds, runSteadyBpm, walkSteadyBpm }, kinetics);
}

function longestToPeak(upperEdgeBpm: number): number | string {
	const answer = longestRunInCycle({
		walkSeconds: 90,
		walkSteadyBpm: 100,
		runSteadyBpm: 160,
		upperEdgeBpm
	});
	return answer.kind === 'seconds' ? answer.seconds : answer.kind;
}

function shortestToTrough(upperEdgeBpm: number): number | string {
	const answer = shortestRecoveryInCycle({
		runSeconds: 60,
		runSteadyBpm: 160,
		walkSteadyBpm: 100,
		upperEdgeBpm
	});
	return answer.kind === 'seconds' ? answer.seconds : answer.kind;
}

function constant(part: 'usual' | 'spread', name: keyof Kinetics): number {
	return (part === 'usual' ? usualKinetics : kineticsSpread)[name];
}

const rise = [
	[15, 109.1708],
	[30, 116.239],
	[57.6, 125.2848],
	[60, 125.8854],
	[90, 131.6155],
	[120, 135.0194],
	[180, 138.2425],
	[300, 139.7812]
] as const;

const rounds = [138.828, 108.1388, 141.6999, 108.7408, 141.9124, 108.7853, 141.9281, 108.7886];
const round4 = halfDigit(4);

export const rows: readonly PublishedValue[] = [
	published(
		'time constant of a rise',
		constant,
		['usual', 'risingTauSeconds'],
		57.6,
		0,
		'hunt2015',
		'seen'
	),
	published('its spread', constant, ['spread', 'risingTauSeconds'], 23.6, 0, 'hunt2015', 'seen'),
	published(
		'time constant of a fall in light effort',
		constant,
		['usual', 'fallingTauSeconds'],
		90.6,
		0,
		'barak2011',
		'seen'
	),
	published('its spread', constant, ['spread', 'fallingTauSeconds'], 30.4, 0, 'barak2011', 'seen'),
	...rise.map(([seconds, bpm]) =>
		published(
			'from 100 towards 140',
			pulseAfter,
			[100, 140, seconds],
			bpm,
			round4,
			'hunt2015',
			'computed'
		)
	),
	published(
		'seconds to half of a change',
		secondsToMake,
		[0.5],
		39.925,
		halfDigit(3),
		'hunt2015',
		'computed'
	),
	published(
		'seconds to 95 % of a change',
		secondsToMake,
		[0.95],
		172.554,
		halfDigit(3),
		'hunt2015',
		'computed'
	),
	published(
		'drop in a minute, untrained, seated',
		dropInOneMinute,
		[144, 100, 50.6],
		30.558,
		halfDigit(3),
		'barak2011',
		'computed'
	),
	published(
		'drop in a minute, untrained, light effort',
		dropInOneMinute,
		[144, 96, 90.6],
		23.247,
		halfDigit(3),
		'barak2011',
		'computed'
	),
	published(
		'drop in a minute, untrained, lying',
		dropInOneMinute,
		[143, 90, 36.4],
		42.805,
		halfDigit(3),
		'barak2011',
		'computed'
	),
	published(
		'drop in a minute, athletes, seated',
		dropInOneMinute,
		[147, 89, 52.5],
		39.503,
		halfDigit(3),
		'barak2011',
		'computed'
	),

	...rounds.map((bpm, at) =>
		published(
			'end of a phase, equal time constants',
			edgeOfRuns,
			[at + 1, equalTaus],
			bpm,
			round4,
			'hunt2015',
			'computed'
		)
	),
	published(
		'settled cycle, equal time constants',
		cycle,
		[60, 90, equalTaus],
		{ peakBpm: 141.9293, troughBpm: 108.7889, meanBpm: 124 },
		round4,
		'hunt2015',
		'computed'
	),
	published(
		'settled cycle',
		cycle,
		[60, 90, usualKinetics],
		{ peakBpm: 144.6646, troughBpm: 116.5404, meanBpm: 130.1873 },
		round4,
		'barak2011',
		'computed'
	),
	published(
		'settled cycle of quicker hearts',
		cycle,
		[60, 90, quickTaus],
		{ peakBpm: 153.067, troughBpm: 108.7719, meanBpm: 129.906 },
		round4,
		'hunt2015',
		'computed'
	),
	published(
		'steady pulse of a walk',
		steadyAtSpeed,
		['walk', 90],
		101.4286,
		round4,
		'karvonen1957',
		'computed'
	),
	published(
		'steady pulse of a run',
		steadyAtSpeed,
		['run', 130],
		160.7937,
		round4,
		'karvonen1957',
		'computed'
	),
	...(
		[
			[60, 90, 142.9142, 110.1244, 125.1746],
			[60, 60, 145.3095, 116.9127, 131.1111],
			[60, 120, 141.6112, 106.4319, 121.2169]
		] as const
	).map(([runSeconds, walkSeconds, peakBpm, troughBpm, meanBpm]) =>
		published(
			'from speeds to the settled cycle',
			cycleOfSpeeds,
			[runSeconds, walkSeconds, equalTaus],
			{ peakBpm, troughBpm, meanBpm },
			round4,
			'hunt2015',
			'computed'
		)
	),
	published(
		'run whose cycle peaks there',
		longestToPeak,
		[144.6646],
		60,
		0.001,
		'barak2011',
		'computed'
	),
	published(
		'walk whose cycle falls to there',
		shortestToTrough,
		[116.5404],
		90,
		0.001,
		'barak2011',
		'computed'
	)
];

/** What each function above stands for. */
export const subjects: Subjects = new Map<unknown, Subject>([
	[constant, { formula: 'pulseCourse', unit: 'seconds' }],
	[pulseAfter, { formula: 'pulseCourse', unit: 'bpm' }],
	[secondsToMake, { formula: 'pulseCourse', unit: 'seconds' }],
	[dropInOneMinute, { formula: 'pulseCourse', unit: 'bpm' }],
	[edgeOfRuns, { formula: 'expectedPulse', unit: 'bpm' }],
	[cycle, { formula: 'steadyCycle', unit: 'bpm' }],
	[cycleOfSpeeds, { formula: 'steadyCycle', unit: 'bpm' }],
	[steadyAtSpeed, { formula: 'steadyPulse', unit: 'bpm' }],
	[longestToPeak, { formula: 'longestRun', unit: 'seconds' }],
	[shortestToTrough, { formula: 'shortestRecovery', unit: 'seconds' }]
]);
