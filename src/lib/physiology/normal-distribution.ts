/** The bell curve: height, share below, and the place below which a share lies. No units. */

const ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

/**
 * Density of the standard normal distribution. Source abramowitzStegun1964, 26.2.1.
 * @example standardNormalPdf(0) // 0.3989422804
 */
export function standardNormalPdf(z: number): number {
	return Math.exp((-z * z) / 2) / ROOT_TWO_PI;
}

/**
 * Share of the standard normal distribution below z. Hart's rational approximation in the form of
 * source west2005; within 1e-14 of the true share everywhere, and right in its first eight digits far
 * out in the lower tail too.
 * @example standardNormalCdf(1) // 0.8413447461
 */
export function standardNormalCdf(z: number): number {
	if (Number.isNaN(z)) return NaN;
	const distance = Math.abs(z);
	if (distance > 37.5) return z > 0 ? 1 : 0;
	const tail = distance < 5 * Math.SQRT2 ? nearTail(distance) : farTail(distance);
	return z > 0 ? 1 - tail : tail;
}

function nearTail(z: number): number {
	let top = 0.0352624965998911 * z + 0.700383064443688;
	top = top * z + 6.37396220353165;
	top = top * z + 33.912866078383;
	top = top * z + 112.079291497871;
	top = top * z + 221.213596169931;
	top = top * z + 220.206867912376;
	let bottom = 0.0883883476483184 * z + 1.75566716318264;
	bottom = bottom * z + 16.064177579207;
	bottom = bottom * z + 86.7807322029461;
	bottom = bottom * z + 296.564248779674;
	bottom = bottom * z + 637.333633378831;
	bottom = bottom * z + 793.826512519948;
	bottom = bottom * z + 440.413735824752;
	return (Math.exp((-z * z) / 2) * top) / bottom;
}

function farTail(z: number): number {
	return standardNormalPdf(z) / (z + excessOfHazard(z, 1));
}

/**
 * The tail of Laplace's continued fraction from its n-th level: n/(z + (n+1)/(z + (n+2)/(z + ...))).
 * With n = 1 it is what the hazard of the upper tail has above z. Source abramowitzStegun1964,
 * 26.2.14. Sixty levels are exact to the last digit from z = 4 on.
 * @example excessOfHazard(10, 1) // 0.0980932
 */
export function excessOfHazard(z: number, level: number): number {
	let fraction = 0;
	for (let n = level + 60; n >= level; n--) fraction = n / (z + fraction);
	return fraction;
}

/**
 * The place below which a share of the standard normal distribution lies: the inverse of
 * standardNormalCdf. Wichura's algorithm AS 241, source wichura1988; relative error about 1e-15.
 * @throws RangeError unless the share lies between 0 and 1; 0 and 1 themselves give the infinities
 * @example standardNormalQuantile(0.975) // 1.9599639845
 */
export function standardNormalQuantile(share: number): number {
	if (!(share >= 0 && share <= 1)) {
		throw new RangeError('standardNormalQuantile requires a share from 0 to 1');
	}
	if (share === 0) return -Infinity;
	if (share === 1) return Infinity;
	const fromMiddle = share - 0.5;
	if (Math.abs(fromMiddle) <= 0.425) {
		const r = 0.180625 - fromMiddle * fromMiddle;
		return (fromMiddle * polynomial(middleTop, r)) / polynomial(middleBottom, r);
	}
	const r = Math.sqrt(-Math.log(fromMiddle < 0 ? share : 1 - share));
	const distance =
		r <= 5
			? polynomial(sideTop, r - 1.6) / polynomial(sideBottom, r - 1.6)
			: polynomial(tailTop, r - 5) / polynomial(tailBottom, r - 5);
	return fromMiddle < 0 ? -distance : distance;
}

function polynomial(coefficientsFromHighest: readonly number[], at: number): number {
	let sum = 0;
	for (const coefficient of coefficientsFromHighest) sum = sum * at + coefficient;
	return sum;
}

const middleTop = [
	2509.0809287301226727, 33430.575583588128105, 67265.770927008700853, 45921.953931549871457,
	13731.693765509461125, 1971.5909503065514427, 133.14166789178437745, 3.387132872796366608
];
const middleBottom = [
	5226.495278852854561, 28729.085735721942674, 39307.89580009271061, 21213.794301586595867,
	5394.1960214247511077, 687.1870074920579083, 42.313330701600911252, 1
];
const sideTop = [
	7.7454501427834140764e-4, 0.0227238449892691845833, 0.24178072517745061177,
	1.27045825245236838258, 3.64784832476320460504, 5.7694972214606914055, 4.6303378461565452959,
	1.42343711074968357734
];
const sideBottom = [
	1.05075007164441684324e-9, 5.475938084995344946e-4, 0.0151986665636164571966,
	0.14810397642748007459, 0.68976733498510000455, 1.6763848301838038494, 2.05319162663775882187, 1
];
const tailTop = [
	2.01033439929228813265e-7, 2.71155556874348757815e-5, 0.0012426609473880784386,
	0.026532189526576123093, 0.29656057182850489123, 1.7848265399172913358, 5.4637849111641143699,
	6.6579046435011037772
];
const tailBottom = [
	2.04426310338993978564e-15, 1.4215117583164458887e-7, 1.8463183175100546818e-5,
	7.868691311456132591e-4, 0.0148753612908506148525, 0.13692988092273580531, 0.59983220655588793769,
	1
];
