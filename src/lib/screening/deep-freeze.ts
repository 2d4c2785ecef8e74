/** Freezes a tree of plain objects and arrays, so that published rules cannot be changed by accident. */
export function deepFreeze<Tree>(tree: Tree): Tree {
	if (typeof tree !== 'object' || tree === null || Object.isFrozen(tree)) return tree;
	Object.freeze(tree);
	for (const branch of Object.values(tree)) deepFreeze(branch);
	return tree;
}
