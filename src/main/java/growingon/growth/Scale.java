package growingon.growth;

import growingon.nursery.species.Curve.Law;

/**
 * The coordinate in which a saturating growth law is plain decay: distance(t) = distance(0)
 * e^(−rate t), where the distance is how far a trunk is from its final size D on that scale.
 */
enum Scale {
  /** Levelling: D − d over D. */
  LINEAR {
    @Override
    double distance(double part, double shape) {
      return 1 - part;
    }

    @Override
    double part(double distance, double shape) {
      return 1 - distance;
    }
  },
  /** Gompertz: ln(D/d). */
  LOG {
    @Override
    double distance(double part, double shape) {
      return -Math.log(part);
    }

    @Override
    double part(double distance, double shape) {
      return Math.exp(-distance);
    }
  },
  /** Chapman–Richards with exponent p: 1 − (d/D)^(1/p). */
  ROOT {
    @Override
    double distance(double part, double shape) {
      return -Math.expm1(Math.log(part) / shape);
    }

    @Override
    double part(double distance, double shape) {
      return Math.pow(1 - distance, shape);
    }
  },
  /** Theta-logistic with exponent q, logistic at q = 1: (D/d)^q − 1. */
  THETA {
    @Override
    double distance(double part, double shape) {
      return shape == 1 ? 1 / part - 1 : Math.expm1(-shape * Math.log(part));
    }

    @Override
    double part(double distance, double shape) {
      return shape == 1 ? 1 / (1 + distance) : Math.pow(1 + distance, -1 / shape);
    }
  };

  /** The scale of a law that relaxes towards a final size. */
  static Scale of(Law law) {
    return switch (law) {
      case LEVELLING -> LINEAR;
      case GOMPERTZ -> LOG;
      case RICHARDS -> ROOT;
      case LOGISTIC, THETA_LOGISTIC -> THETA;
      case STEADY -> throw new IllegalArgumentException("the law " + law + " has no scale");
    };
  }

  /** Distance of a trunk that is the given part (0 to 1) of its final size. */
  abstract double distance(double part, double shape);

  /** Part of the final size at a distance. */
  abstract double part(double distance, double shape);
}
