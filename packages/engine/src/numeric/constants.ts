/** Constants that several rooms share, each once. */

/** [J/(mol·K)] @source CODATA 2018, exact */
export const GAS_CONSTANT_JMOLK = 8.31446261815324;
/** [W/(m²·K⁴)] @source CODATA 2018, exact, here to ten digits */
export const STEFAN_BOLTZMANN = 5.670374419e-8;
/** Standard gravity [m/s²]. @source ISO 80000-3, by definition */
export const GRAVITY_MS2 = 9.80665;
/** Of the Celsius scale [K]. @source BIPM, The International System of Units, by definition */
export const ZERO_CELSIUS_K = 273.15;
/** From the median of a normal to its 90 % point, in standard deviations. @source Φ⁻¹(0.9), to the last digit */
export const NORMAL_P90_SD = 1.2815515655446004;
