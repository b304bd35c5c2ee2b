package growingon.project.history;

import growingon.nursery.market.Quality;
import java.util.Optional;

/** A recorder that takes nothing down, for those that take down little. */
public abstract class Unheard implements Recorder {
  @Override
  public void diedBefore(double plants) {}

  @Override
  public void died(int month, double plants) {}

  @Override
  public void culled(int month, double plants) {}

  @Override
  public void sold(int month, int row, int grade, Quality quality, double units, double money) {}

  @Override
  public void used(int month, Use.Kind kind, String item, double amount) {}

  @Override
  public void freed(int month, String pot, double amount) {}

  @Override
  public void worked(int month, String job, double plants, double hours) {}

  @Override
  public void paid(int month, double amount) {}

  @Override
  public void stood(int month, Optional<String> place, double plants, double m2, double careCost) {}

  @Override
  public void seasonEnded(int season, GradedPlants standing) {}
}
