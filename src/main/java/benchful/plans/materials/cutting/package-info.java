/** How what is needed is cut from lengths and sheets, and which packs are bought for it. */
package benchful.plans.materials.cutting;
