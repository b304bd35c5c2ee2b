package growingon.write.chart;

import java.awt.Color;

/**
 * Eight kinds of eyes. What is missing or weak in six of them is simulated by the matrices of
 * Machado, Oliveira and Fernandes, "A Physiologically-based Model for Simulation of Color Vision
 * Deficiency" (2009), table 1, on linear RGB: severity 1.0 for those without one sort of cones, 0.6
 * for those in which it is weak. The numbers are from memory; they agree with those of an open
 * library of colour functions. Grey is the luminance of sRGB (IEC 61966-2-1), as a black print has
 * it.
 */
public enum Eye {
  NORMAL(1, 0, 0, 0, 1, 0, 0, 0, 1),
  PROTANOPIA(
      0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
  DEUTERANOPIA(
      0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
  TRITANOPIA(
      1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900),
  PROTANOMALY(
      0.385450, 0.769005, -0.154455, 0.100526, 0.829802, 0.069673, -0.007442, -0.022190, 1.029632),
  DEUTERANOMALY(
      0.498864, 0.674741, -0.173604, 0.205199, 0.754872, 0.039929, -0.011131, 0.030969, 0.980162),
  TRITANOMALY(
      1.104996, -0.046633, -0.058363, -0.032137, 0.971635, 0.060503, 0.001336, 0.317922, 0.680742),
  GREY(0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722);

  private final double[] matrix;

  Eye(double... matrix) {
    this.matrix = matrix;
  }

  /** Linear red, green and blue, 0 to 1, as this eye sees a colour. */
  public double[] sees(Color colour) {
    double[] rgb = {linear(colour.getRed()), linear(colour.getGreen()), linear(colour.getBlue())};
    double[] seen = new double[3];
    for (int i = 0; i < 3; i++) {
      double sum = 0;
      for (int j = 0; j < 3; j++) {
        sum += matrix[3 * i + j] * rgb[j];
      }
      seen[i] = Math.max(0, Math.min(1, sum));
    }
    return seen;
  }

  /** How far two colours are apart for this eye, CIEDE2000. */
  public double between(Color one, Color other) {
    return ColourDifference.ciede2000(
        ColourDifference.lab(sees(one)), ColourDifference.lab(sees(other)));
  }

  /** How light a colour looks, L* of CIELAB, 0 to 100. */
  public double lightness(Color colour) {
    return ColourDifference.lab(sees(colour))[0];
  }

  private static double linear(int channel) {
    double value = channel / 255.0;
    return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
  }
}
