export { cautions, cautionsAtReading, cautionsAtSetUp, type Caution } from './caution';
export { starters, unitAndMark, unitFamilies, type Starter, type UnitFamily } from './starter';
