/**
 * Names of properties that only the code of functions.js writes and reads: the build gives them one or two letters there
 * (8 kB less, 1.3 kB by gzip). A name that comes from elsewhere must not stand here: one that a cell, a formula or a firm's limit
 * names, a property of Excel's cells (`basicValue`) or of a message that a page translates (`said`). `test/functions/bundle.test.ts`
 * reads the built file for names that are left, and the project `built` of the tests calls its functions.
 */
export const INNER_NAMES: readonly string[] = `
  aboutLine afterCollapse alsoReads alsoYields andDry andWet answer answered apparatus appliedAt asked atHigh atLow
  atOneMinute backRow basis begins bend best blankReadings blankTimes branches called choices classes clean cleaned
  clearness clockIsAsked compared complaint compressionIndex compressionRatio compute consolidates constants
  constructedStress contributions converged corner corrected cost crossing current curveIsPicked curvePoint cvLogTime
  cvOfConsolidation cvOfRate cvRootTime damped dayNumber decimals deflection deflections deflectionSinceSeating
  disturbed doubts drawingSlope dryDensity dryMass dStress e100 earlier early eFinal eInSitu elsewhere excess explained
  expression faces fault faults filledRows finalHeight finalUnloading firstLoading firstReading firstU flattening
  flattens found fourTimes grows hangerMass heightAtHalf heightBefore heightLogTime heightRootTime increase increasing
  increment initialHeight initialVoidRatio inSituStress inundated inWords iterations jacobian jump knowsWetting lacking
  lastT lastTime later law leftOut lever lineIndex liquidLimit loadResults loadWords logTime loops lunneClass maximum
  maxIterations measures missing model modulusNumber moved negligibleGain noise noTailSlope numbers ofAllPoints onset
  onUnits otherRate others overrides parabola parts pick picks plasticityIndex plural polish poreWater
  preconsolidationStress prepare primary primarySteps quality quantity rateHigh rateLow rates readingAtFour
  recompressionIndex recompressionLine recompressionRatio record refusal registerSource remarks residuals resolution
  ringAndDry ringAndWetAfter ringAndWetBefore rootTime rounded rowOf rss saltContent scatter seating sentence series
  sharpness sheetLanguage shown signed solidsHeight solved specificGravity specimens spikes squeeze
  startsAtInitialVoidRatio steepness strainClass stretches swellingIndex symbol tailSlope theory thickness timeFactor
  timeZero tins toDeformation toHeight toVoidRatio travel trial unload unloadingIsAsked unloadSteps unloadTo virginLine
  voidIndex voidRatio waterContent waterContentTrimmings weighed weights wetAfter whole wide word wrong wUncorrected
  zeroReading zerosCount
`
  .trim()
  .split(/\s+/);
