package frillbook.picture;

import java.util.List;

/** All pictures of one plan. */
public record PictureSet(
    Ripple ripple,
    Flower flower,
    Side side,
    ClothPicture cloth,
    Guide guide,
    List<MoneyShare> money,
    MoneyShare.Largest largest,
    Leanings leanings,
    BasePicture base) {}
