/**
 * Names of properties that only the code of functions.js writes and reads: the build gives them one or two letters there
 * (7 kB less, 1 kB by gzip). A name that comes from elsewhere must not stand here: one that a cell, a formula or a firm's limit
 * names, a property of Excel's cells (`basicValue`) or of a message that a page translates (`said`). `test/functions/bundle.test.ts`
 * reads the built file for names that are left, and the project `built` of the tests calls its functions.
 */
export const INNER_NAMES: readonly string[] = `
  aboutLine afterCollapse answer atOneMinute basis branches called cleaned clearness compared complaint
  compressionIndex compressionRatio constants corner corrected cost crossing curveIsPicked curvePoint cvLogTime
  cvOfConsolidation cvRootTime decimals deflection deflections deflectionSinceSeating disturbed drawingSlope
  dryDensity dryMass earlier early excess expression faults finalHeight finalUnloading firstLoading firstReading
  firstU flattening fourTimes heightAtHalf heightBefore heightLogTime heightRootTime increase increment initialHeight
  initialVoidRatio inSituStress jacobian knowsWetting lastT lastTime later leftOut loadResults loadWords logTime loops
  lunneClass maxIterations measures modulusNumber negligibleGain noTailSlope numbers onHeight parts picks
  plasticityIndex plural preconsolidationStress primary primarySteps quantity readingAtFour recompressionIndex
  recompressionLine recompressionRatio record refusal registerSource remarks residuals ringAndDry ringAndWetAfter
  ringAndWetBefore rootTime rounded saltContent scatter sentence series sharpness signed solidsHeight specificGravity
  startsAtInitialVoidRatio steepness strainClass swellingIndex symbol tailSlope thickness timeZero toDeformation
  travel unload virginLine voidRatio waterContent waterContentTrimmings weights word wUncorrected zeroReading
  zerosCount
`
  .trim()
  .split(/\s+/);
