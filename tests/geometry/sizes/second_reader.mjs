// Reads the sizes a STEP file states with a reader of ISO 10303-21 text that nobody of this project
// wrote (npm package @ifc-lite/parser, a general one), and prints them as JSON: for each size its
// aspect's name, class, nominal, and the radii of the cylinders its faces lie on.
//
// node second_reader.mjs FOLDER_OF_PACKAGES FILE.step

import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

const [packages, file] = process.argv.slice(2);
const { EntityExtractor, StepTokenizer } = await import(
  pathToFileURL(`${packages}/@ifc-lite/parser/dist/index.js`));

const bytes = new Uint8Array(readFileSync(file));
const extractor = new EntityExtractor(bytes);
const entities = new Map();
for (const found of new StepTokenizer(bytes).scanEntities()) {
  const ref = { ...found, byteOffset: found.offset, byteLength: found.length, lineNumber: found.line };
  entities.set(found.expressId, { type: found.type.toUpperCase(), ref });
}
const attributes = (id) => extractor.extractEntity(entities.get(id).ref).attributes;
const ofType = (type) => [...entities].filter(([, e]) => e.type === type).map(([id]) => id);

const facesOf = (aspect) => {
  const own = ofType('GEOMETRIC_ITEM_SPECIFIC_USAGE')
    .map(attributes).filter((usage) => usage[2] === aspect).map((usage) => usage[4]);
  const parts = ofType('SHAPE_ASPECT_RELATIONSHIP')
    .map(attributes).filter((part) => part[2] === aspect).flatMap((part) => facesOf(part[3]));
  return [...own, ...parts];
};
const radiusOf = (face) => {
  const surface = attributes(face)[2];
  return entities.get(surface).type === 'CYLINDRICAL_SURFACE' ? attributes(surface)[2] : null;
};

const sizes = ofType('PLUS_MINUS_TOLERANCE').map(attributes).map(([range, size]) => {
  const [aspect, kind] = attributes(size);
  const fit = entities.get(range).type === 'LIMITS_AND_FITS' ? attributes(range) : null;
  return { name: attributes(aspect)[0], kind, fit, radii: facesOf(aspect).map(radiusOf) };
});
console.log(JSON.stringify(sizes));
